sheets-foot = Even when it swings well, you may not launch it. The rules at your school and a grown-up decide.
