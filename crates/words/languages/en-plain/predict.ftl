predict-altered =
    Somebody changed something in this trial by hand, and not on this page.
predict-several-changes =
    More than one thing has changed since trial { $trial }. Then nobody can tell which of them did
    it. Above you can take one back.
predict-already = That is what you said before.
predict-now-cards = Locked. Next come the cards, with the adult.
