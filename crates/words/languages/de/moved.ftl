moved-not = { $balance-point ->
    [mass] Der Schwerpunkt hat sich nicht verschoben.
   *[pressure] Der Druckpunkt (von der Seite) hat sich nicht verschoben.
}
moved-point = { $balance-point ->
    [mass] Der Schwerpunkt hat sich um { $distance }
   *[pressure] Der Druckpunkt (von der Seite) hat sich um { $distance }
} { $moved-way ->
    [back] nach hinten
   *[forward] nach vorn
} verschoben.
moved-mass-same = Die Rakete wiegt dasselbe.
moved-heavier = Die Rakete ist { $mass } schwerer.
moved-lighter = Die Rakete ist { $mass } leichter.
moved-separation = Der Abstand { $became ->
    [grew] wuchs von { $from } auf { $to }
    [shrank] schrumpfte von { $from } auf { $to }
   *[went] ging von { $from } auf { $to }
}.
moved-separation-stayed = Der Abstand blieb bei { $to }.
moved-measured = Der gemessene Abstand { $became ->
    [grew] wuchs von { $from } auf { $to }
    [shrank] schrumpfte von { $from } auf { $to }
   *[went] ging von { $from } auf { $to }
}.
moved-measured-stayed = Der gemessene Abstand blieb bei { $to }.
