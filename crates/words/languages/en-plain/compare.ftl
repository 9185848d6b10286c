compare-baseline = the first to compare with
