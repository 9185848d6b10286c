-- The results of many classes put together, as the place Class does it, for more than a page can
-- hold. Written for DuckDB; nothing in it needs one computer only: the same statements over a
-- folder that is parted by region run on a cluster.
--
--   duckdb -c "SET VARIABLE files = 'results/*.csv'" -c ".read merge.sql" …
--
-- Input: the files of classes (crates/link/FORMATS.md, "The table of a class"), with commas, in
-- any number and in the order of their names. Variables: `files`, and `rules`, four letters, or
-- NULL to take results made under any rules.
--
-- Output, tables:
--   results   one row a trial: what was handed in last counts
--   older     what was handed in before it under the same class, group and trial, and differs
--   refused   rows that were not taken in, each with its reason
--   counts    how many rows there were, and what became of them
--   points    what the turning point is worked out of: separation, and whether it flew nose-first
--   odd       readings to be asked about: for organisers, never for a list in public

CREATE OR REPLACE TABLE handed_in AS
SELECT row_number() OVER () AS row, *
FROM read_csv(getvariable('files'), header = true, all_varchar = true, union_by_name = true,
              filename = 'file', delim = ',', quote = '"', escape = '"', nullstr = '');

-- A text in a cell loses the apostrophe that keeps spreadsheets from reading it as a number.
CREATE OR REPLACE MACRO plain(cell) AS coalesce(regexp_replace(cell, '^''', ''), '');
CREATE OR REPLACE MACRO mm(cell) AS try_cast(cell AS DOUBLE);
CREATE OR REPLACE MACRO is_number(cell) AS
    cell IS NULL OR coalesce(isfinite(try_cast(cell AS DOUBLE)), false);
CREATE OR REPLACE MACRO is_count(cell, least, most) AS
    cell IS NULL OR coalesce(try_cast(cell AS BIGINT) BETWEEN least AND most, false);
CREATE OR REPLACE MACRO is_outcome(cell) AS
    cell IS NULL OR cell IN ('steady', 'wobbling', 'sideways', 'tail_first', 'slipped', 'not_sure');
CREATE OR REPLACE MACRO median_of(readings) AS list_median(readings);

CREATE OR REPLACE TABLE read AS
WITH cells AS (
    SELECT
        row, file, kind_of_row AS kind,
        upper(plain(class)) AS class, lower("group") AS grp, try_cast(trial AS INTEGER) AS trial,
        try_cast(compared_with AS INTEGER) AS compared_with,
        plain(what_changed) AS what_changed, try_cast(changes AS INTEGER) AS changes,
        nullif(plain(rules), '') AS rules,
        mm(rocket_length_mm) AS length_mm, mm(body_width_mm) AS body_width_mm,
        mm(mass_g) AS mass_g,
        mm(computed_centre_of_mass_mm) AS computed_mass_mm,
        mm(computed_centre_of_pressure_mm) AS computed_pressure_mm,
        list_filter([mm(centre_of_mass_reading_1_mm), mm(centre_of_mass_reading_2_mm),
                     mm(centre_of_mass_reading_3_mm)], lambda x: x IS NOT NULL) AS mass_readings,
        list_filter([mm(centre_of_pressure_reading_1_mm), mm(centre_of_pressure_reading_2_mm),
                     mm(centre_of_pressure_reading_3_mm)], lambda x: x IS NOT NULL) AS pressure_readings,
        mm(centre_of_mass_middle_mm) AS mass_middle_mm, mm(centre_of_mass_range_mm) AS mass_range_mm,
        mm(centre_of_mass_readings) AS mass_count,
        mm(centre_of_pressure_middle_mm) AS pressure_middle_mm,
        mm(centre_of_pressure_range_mm) AS pressure_range_mm,
        mm(centre_of_pressure_readings) AS pressure_count,
        prediction, coalesce(try_cast(prediction_swings_seen AS INTEGER), 0) AS swings_seen,
        list_filter([swing_1, swing_2, swing_3, swing_4, swing_5, swing_6],
                    lambda x: x IS NOT NULL) AS swings,
        two_changes_allowed IS NOT DISTINCT FROM 'yes' AS two_changes_allowed,
        swung_first IS NOT DISTINCT FROM 'yes' AS swung_first,
        altered IS NOT DISTINCT FROM 'yes' AS altered,
        example IS NOT DISTINCT FROM 'yes' AS example,
        CASE
            WHEN NOT regexp_full_match(plain(class), '[A-Za-z0-9-]{0,12}') THEN 'class'
            WHEN NOT coalesce(regexp_full_match(lower("group"),
                '(red|orange|yellow|green|blue|purple|brown|black|grey|white|silver|gold) ([1-9]|[123][0-9]|40)'),
                false) THEN 'group'
            WHEN trial IS NULL OR NOT is_count(trial, 1, 65534) THEN 'trial'
            WHEN NOT is_count(compared_with, 1, 65534) THEN 'compared_with'
            WHEN NOT is_count(changes, 0, 255) THEN 'changes'
            WHEN NOT regexp_full_match(plain(rules), '([0-9A-HJKMNP-TV-Z]{4})?') THEN 'rules'
            WHEN NOT (is_number(rocket_length_mm) AND is_number(body_width_mm) AND is_number(mass_g)
                AND is_number(computed_centre_of_mass_mm)
                AND is_number(computed_centre_of_pressure_mm)) THEN 'model'
            WHEN 0 < len(list_filter([rocket_length_mm, body_width_mm, mass_g,
                computed_centre_of_mass_mm, computed_centre_of_pressure_mm], lambda x: x IS NULL))
                AND 5 > len(list_filter([rocket_length_mm, body_width_mm, mass_g,
                computed_centre_of_mass_mm, computed_centre_of_pressure_mm], lambda x: x IS NULL))
                THEN 'model'
            WHEN NOT (is_number(centre_of_mass_reading_1_mm) AND is_number(centre_of_mass_reading_2_mm)
                AND is_number(centre_of_mass_reading_3_mm) AND is_number(centre_of_mass_middle_mm)
                AND is_number(centre_of_mass_range_mm) AND is_count(centre_of_mass_readings, 1, 3))
                THEN 'centre_of_mass'
            WHEN NOT (is_number(centre_of_pressure_reading_1_mm)
                AND is_number(centre_of_pressure_reading_2_mm)
                AND is_number(centre_of_pressure_reading_3_mm)
                AND is_number(centre_of_pressure_middle_mm)
                AND is_number(centre_of_pressure_range_mm)
                AND is_count(centre_of_pressure_readings, 1, 3)) THEN 'centre_of_pressure'
            WHEN NOT is_outcome(prediction) OR prediction = 'slipped' THEN 'prediction'
            WHEN NOT (is_outcome(swing_1) AND is_outcome(swing_2) AND is_outcome(swing_3)
                AND is_outcome(swing_4) AND is_outcome(swing_5) AND is_outcome(swing_6))
                THEN 'swings'
        END AS unreadable
    FROM handed_in
    WHERE kind_of_row IN ('result', 'older')
), middles AS (
    SELECT * EXCLUDE (mass_middle_mm, mass_range_mm, mass_count,
                      pressure_middle_mm, pressure_range_mm, pressure_count),
        CASE WHEN len(mass_readings) > 0 THEN median_of(mass_readings) ELSE mass_middle_mm END
            AS mass_mm,
        CASE WHEN len(mass_readings) > 0 THEN list_max(mass_readings) - list_min(mass_readings)
            WHEN mass_middle_mm IS NOT NULL THEN coalesce(mass_range_mm, 0) END AS mass_range_mm,
        CASE WHEN len(mass_readings) > 0 THEN len(mass_readings)
            WHEN mass_middle_mm IS NOT NULL THEN coalesce(mass_count, 1) END AS mass_count,
        CASE WHEN len(pressure_readings) > 0 THEN median_of(pressure_readings)
            ELSE pressure_middle_mm END AS pressure_mm,
        CASE WHEN len(pressure_readings) > 0
            THEN list_max(pressure_readings) - list_min(pressure_readings)
            WHEN pressure_middle_mm IS NOT NULL THEN coalesce(pressure_range_mm, 0) END
            AS pressure_range_mm,
        CASE WHEN len(pressure_readings) > 0 THEN len(pressure_readings)
            WHEN pressure_middle_mm IS NOT NULL THEN coalesce(pressure_count, 1) END
            AS pressure_count,
        list_filter(swings, lambda x: x <> 'slipped') AS counted
    FROM cells
)
SELECT *,
    CASE
        WHEN unreadable IS NOT NULL THEN 'unreadable: ' || unreadable
        WHEN len(counted) > 3 OR list_position(swings, counted[3]) IS NULL AND len(counted) >= 3
            THEN 'unreadable: swings'
        WHEN getvariable('rules') IS NOT NULL AND NOT example
            AND rules IS DISTINCT FROM getvariable('rules')
            THEN 'other rules: ' || coalesce(rules, 'none')
        WHEN greatest(abs(mass_mm), abs(pressure_mm), abs(length_mm), abs(body_width_mm), abs(mass_g),
            abs(computed_mass_mm), abs(computed_pressure_mm)) > 10000 THEN 'no number of a rocket'
        WHEN kind = 'result' AND len(counted) < 3 THEN 'unfinished'
    END AS reason,
    -- All that the code of a result has room for: rows with the same are one.
    hash([compared_with::VARCHAR, changes::VARCHAR, rules, length_mm::VARCHAR, body_width_mm::VARCHAR,
        mass_g::VARCHAR, computed_mass_mm::VARCHAR, computed_pressure_mm::VARCHAR, mass_mm::VARCHAR,
        mass_range_mm::VARCHAR, mass_count::VARCHAR, pressure_mm::VARCHAR, pressure_range_mm::VARCHAR,
        pressure_count::VARCHAR, prediction, swings_seen::VARCHAR, array_to_string(swings, ' '),
        two_changes_allowed::VARCHAR, swung_first::VARCHAR, altered::VARCHAR, example::VARCHAR])
        AS essence
FROM middles;

CREATE OR REPLACE TABLE refused AS
SELECT row, file, class, grp, trial, reason FROM read WHERE reason IS NOT NULL ORDER BY row;

-- Of rows that are one, the first; the last of those that are not counts.
CREATE OR REPLACE TABLE distinct_rows AS
SELECT * FROM (
    SELECT *, row_number() OVER (PARTITION BY class, grp, trial, essence ORDER BY row) AS nth
    FROM read WHERE reason IS NULL
) WHERE nth = 1;

CREATE OR REPLACE TABLE ranked AS
SELECT *, row_number() OVER (PARTITION BY class, grp, trial ORDER BY row DESC) AS from_last
FROM distinct_rows;

CREATE OR REPLACE TABLE results AS
SELECT * EXCLUDE (nth, from_last),
    pressure_mm - mass_mm AS measured_separation_mm,
    computed_pressure_mm - computed_mass_mm AS computed_separation_mm,
    CASE
        WHEN 2 * len(list_filter(counted, lambda x: x IN ('steady', 'wobbling'))) > len(counted)
            THEN true
        WHEN 2 * len(list_filter(counted, lambda x: x IN ('sideways', 'tail_first'))) > len(counted)
            THEN false
    END AS nose_first
FROM ranked WHERE from_last = 1 ORDER BY row;

CREATE OR REPLACE TABLE older AS
SELECT * EXCLUDE (nth, from_last) FROM ranked WHERE from_last > 1 ORDER BY row;

CREATE OR REPLACE TABLE counts AS
SELECT
    (SELECT count(*) FROM read) AS rows,
    (SELECT count(*) FROM results) AS results,
    (SELECT count(*) FROM older) AS older,
    (SELECT count(*) FROM refused) AS refused,
    (SELECT count(*) FROM read WHERE reason IS NULL) - (SELECT count(*) FROM distinct_rows) AS doubled;

CREATE OR REPLACE TABLE points AS
SELECT coalesce(measured_separation_mm, computed_separation_mm) AS separation_mm,
    coalesce(measured_separation_mm, computed_separation_mm) / body_width_mm AS body_widths,
    nose_first
FROM results
WHERE nose_first IS NOT NULL
    AND coalesce(measured_separation_mm, computed_separation_mm) IS NOT NULL
    AND (NOT example OR NOT EXISTS (SELECT 1 FROM results WHERE NOT example));

-- The same questions, by the same limits, as crates/lesson/src/class/odd.rs asks.
CREATE OR REPLACE TABLE odd AS
SELECT class, grp, trial, unnest(list_filter([
    CASE WHEN mass_mm < 0 OR mass_mm > length_mm + 1 THEN 'centre of mass outside' END,
    CASE WHEN pressure_mm < 0 OR pressure_mm > length_mm + 1 THEN 'centre of pressure outside' END,
    CASE WHEN mass_range_mm > 0.15 * length_mm THEN 'centre of mass: wide range' END,
    CASE WHEN pressure_range_mm > 0.15 * length_mm THEN 'centre of pressure: wide range' END,
    CASE WHEN mass_count >= 3 AND pressure_count >= 3 AND mass_range_mm < 0.05
        AND pressure_range_mm < 0.05 THEN 'all readings equal' END,
    CASE WHEN abs(measured_separation_mm) > length_mm THEN 'longer than the rocket' END,
    CASE WHEN least(abs(mass_mm - computed_mass_mm), abs(pressure_mm - computed_pressure_mm)) > 8
        AND abs((mass_mm - computed_mass_mm) - (pressure_mm - computed_pressure_mm)) <= 3
        AND mass_mm IS NOT NULL AND pressure_mm IS NOT NULL THEN 'same slip in both points' END,
    CASE WHEN length_mm IS NOT NULL
        AND abs(measured_separation_mm)
            > greatest(mass_range_mm + pressure_range_mm, 5, 0.1 * length_mm)
        AND nose_first <> (measured_separation_mm > 0) THEN 'other outcome than expected' END
], lambda x: x IS NOT NULL)) AS what
FROM results;
