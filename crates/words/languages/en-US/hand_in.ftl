hand-in-what-is-in-it =
    File and link open again under “a link, code or file”. They hold the group’s color and
    number, and what you wrote.
result-measured =
    This is the result of { $group }, trial { $trial }: center of mass { $mass }, center of
    pressure { $pressure }, separation { $separation } (measured).
