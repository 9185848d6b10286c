typed-unreadable = I cannot read this. You can write { $example }.
typed-without-unit = Write a number only, such as { $example }.
