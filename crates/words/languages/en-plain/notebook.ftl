notebook-twin = Another notebook here is { $group } too. Give one of them another colour or number.
notebook-two-tabs =
    You wrote in this notebook in another window too. Both are kept: yours is a notebook of its
    own now.
notebook-unreadable =
    This page cannot read the notebook that is kept there. It stays as it is.
notebook-not-opened = Not opened: { $names }. The page shows one rocket. Open each by itself.
notebook-reading-fault = Reading { $number }: { $fault } Till then it does not count.
