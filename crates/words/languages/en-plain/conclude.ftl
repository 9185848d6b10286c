conclude-evidence = Evidence: which numbers and swings make you think so?
