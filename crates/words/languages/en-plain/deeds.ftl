deed-turns = { $how-much ->
    [more] The rocket went round faster.
   *[less] The rocket went round slower.
}
deed-density = The air was heavier or lighter than before.
