-- The results of many classes merged as the place Class merges them, for more than a page can
-- hold. For DuckDB; run.py runs it.
--
-- Input: the tables of classes that the page writes as files (crates/link/FORMATS.md, "The table
-- of a class"), in any language, with commas or semicolons. They count in the order of their
-- names. Variables: `files`, a pattern of their names; `rules`, four letters, or NULL to take
-- results made under any rules.
--
-- Output:
--   counts       how many rows there were, and what became of them
--   results      one row a trial: what was handed in last counts
--   older        what was handed in before it under the same class, group and trial, and differs
--   refused      rows that were not taken in, by file and row, each with its reason
--   points       what the turning point is worked out of: trials by separation, how many flew
--                nose-first, and how many otherwise
--   odd          readings to be asked about: for organisers, never for a list in public
--   class_table  results and older as the table of a class again, which the page opens
--
-- A class stands in one region. So a folder that is parted by region may be merged part by part,
-- on as many machines as there are parts: counts, results and refused are those of the parts put
-- together, and points those of the parts added up.

-- Cells -------------------------------------------------------------------------------------

CREATE OR REPLACE MACRO bare(cell) AS
    nullif(trim(cell, ' ' || chr(9) || chr(10) || chr(13) || chr(160)), '');
CREATE OR REPLACE MACRO choice(cell) AS lower(replace(cell, ' ', '_'));

-- A number as a group or a spreadsheet writes it: with a point or a comma, and with marks between
-- the thousands where another mark stands behind them. One that could be either is none.
CREATE OR REPLACE MACRO unusual_number(cell) AS CASE
    WHEN length(regexp_replace(cell, '[^0-9]', '', 'g')) NOT BETWEEN 1 AND 15 THEN NULL
    WHEN regexp_full_match(cell, '[-−+]?\s*[1-9][0-9]{0,2}[.,][0-9]{3}') THEN NULL
    WHEN regexp_full_match(cell, '[-−+]?\s*[0-9]*[.,]?[0-9]*') THEN replace(cell, ',', '.')
    WHEN regexp_full_match(cell, '[-−+]?\s*[0-9]{1,3}(,[0-9]{3})+\.[0-9]*')
        THEN replace(cell, ',', '')
    WHEN regexp_full_match(cell, '[-−+]?\s*[0-9]{1,3}(\.[0-9]{3})+,[0-9]*')
        THEN replace(replace(cell, '.', ''), ',', '.')
END;
CREATE OR REPLACE MACRO number(cell) AS try_cast(CASE
    WHEN regexp_full_match(cell, '-?[0-9]{1,6}([.,][0-9]{1,2})?') THEN replace(cell, ',', '.')
    WHEN cell = '?' THEN 'NaN'
    ELSE regexp_replace(replace(unusual_number(cell), '−', '-'), '[+\s]', '', 'g')
END AS DOUBLE);
CREATE OR REPLACE MACRO tenth(value) AS round(value * 10) / 10 + 0;

-- Readings of a point: of three the middle one, of two the mean.
CREATE OR REPLACE MACRO given(readings) AS CASE WHEN list_count(readings) > 0 THEN readings END;
CREATE OR REPLACE MACRO middle(readings) AS CASE list_count(readings)
    WHEN 2 THEN list_sum(readings) / 2
    WHEN 3 THEN list_sort(readings)[2]
    ELSE list_max(readings)
END;

-- A text that a spreadsheet might take for something else has an apostrophe in front: one that
-- begins like a formula or an error, has digits and at most three words, or is a truth value.
CREATE OR REPLACE MACRO with_plain_digits(text) AS regexp_replace(text,
    '[\x{660}-\x{669}\x{6f0}-\x{6f9}\x{966}-\x{96f}\x{9e6}-\x{9ef}\x{e50}-\x{e59}\x{ff10}-\x{ff19}]',
    '0', 'g');
CREATE OR REPLACE MACRO is_converted(text) AS
    regexp_matches(text, '^[\s\x{a0}\x{feff}]*[=+@#"＝＋－＠-]|^[\t\r\n]')
    OR regexp_matches(with_plain_digits(text), '[0-9]') AND NOT regexp_matches(with_plain_digits(text),
        '(?s)([A-Za-z\x{80}-\x{10ffff}]{2}.*[^A-Za-z\x{80}-\x{10ffff}].*){3}[A-Za-z\x{80}-\x{10ffff}]{2}')
    OR regexp_matches(text, '(?i)^\s*(true|false|wahr|falsch|vrai|faux|vero|falso|verdadero|verdadeiro|waar|onwaar|sant|sann)\s*$');
-- Without what turns the direction of writing, and other control characters.
CREATE OR REPLACE MACRO cleaned(text) AS regexp_replace(regexp_replace(
    regexp_replace(text, '\r\n?', chr(10), 'g'), '[\t\x{85}\x{2028}\x{2029}]', ' ', 'g'),
    '[\x00-\x09\x0b-\x1f\x7f-\x9f\x{61c}\x{200e}\x{200f}\x{202a}-\x{202e}\x{2066}-\x{2069}\x{feff}]',
    '', 'g');
CREATE OR REPLACE MACRO plain(cell) AS cleaned(CASE
    WHEN starts_with(cell, '''') AND (starts_with(cell[2:], '''') OR is_converted(cell[2:]))
        THEN cell[2:]
    ELSE cell
END);
CREATE OR REPLACE MACRO kept(text) AS
    CASE WHEN starts_with(text, '''') OR is_converted(text) THEN '''' || text ELSE text END;

-- Whether a cell cannot be read, given what it was read as.
CREATE OR REPLACE MACRO no_number(cell, value) AS cell IS NOT NULL AND value IS NULL;
CREATE OR REPLACE MACRO no_count(cell, value, least, most) AS cell IS NOT NULL
    AND NOT coalesce(value BETWEEN least AND most AND value = floor(value), false);
CREATE OR REPLACE MACRO no_outcome(cell) AS coalesce(choice(cell) NOT IN
    ('steady', 'wobbling', 'sideways', 'tail_first', 'slipped', 'not_sure'), false);
CREATE OR REPLACE MACRO no_flag(cell) AS coalesce(lower(cell) NOT IN ('yes', 'no'), false);
CREATE OR REPLACE MACRO no_point(one, one_is, two, two_is, three, three_is, middle, middle_is,
        "range", range_is, "count", count_is) AS
    no_number(one, one_is) OR no_number(two, two_is) OR no_number(three, three_is)
    OR no_number(middle, middle_is) OR no_number("range", range_is)
    OR no_count("count", count_is, 1, 3)
    OR coalesce(one_is, two_is, three_is, middle_is) IS NULL
        AND coalesce("range", "count") IS NOT NULL;

-- Rows --------------------------------------------------------------------------------------

-- What reads every row of every file, as a list of cells: by explicit columns, since what guesses
-- them lets rows go without a word. 64 are more than a table has.
CREATE OR REPLACE MACRO literal(text) AS '''' || replace(text, '''', '''''') || '''';
SET VARIABLE rows_of_files = (
    SELECT string_agg('SELECT file, [' || cells || '] AS cells FROM read_csv([' || names
        || '], delim = ' || literal(delimiter) || ', columns = {' || columns || '},
        auto_detect = false, header = false, quote = ''"'', escape = ''"'', nullstr = '''',
        null_padding = true, parallel = false, filename = ''file'')', ' UNION ALL ')
    FROM (
        SELECT delimiter, string_agg(literal(filename), ', ' ORDER BY filename) AS names
        FROM (
            SELECT filename, coalesce(nullif(regexp_extract(content,
                '(?i)^[^\r\n]*?\bkind_of_row *\]? *"?([\t;,])', 1), ''), ',') AS delimiter
            FROM read_text(getvariable('files'))
        )
        GROUP BY delimiter
    ) CROSS JOIN (
        SELECT string_agg('c' || i, ', ' ORDER BY i) AS cells,
            string_agg(literal('c' || i) || ': ''VARCHAR''', ', ' ORDER BY i) AS columns
        FROM range(64) AS r(i)
    )
);

-- A heading is known by its key: in the brackets at its end, or all of it.
CREATE OR REPLACE MACRO key_of(heading) AS lower(trim(coalesce(
    nullif(regexp_extract(bare(heading), '\[([^\[]*)\]$', 1), ''), bare(heading), '')));

-- Where the cells of the rows below some headings stand, up to the next headings. What has two
-- columns with one key is none: nobody knows which would count.
CREATE OR REPLACE TABLE headings AS
WITH lines AS (
    SELECT row_number() OVER () AS row, * FROM query(getvariable('rows_of_files'))
), named AS MATERIALIZED (
    SELECT * FROM lines WHERE contains(lower(array_to_string(cells, ' ')), 'kind_of_row')
), found AS (
    SELECT row, file, list_transform(cells, lambda x: key_of(x)) AS keys FROM named
)
SELECT file AS heading_file, row AS heading_row,
    coalesce(lead(row) OVER (PARTITION BY file ORDER BY row), 1e18::BIGINT) AS next_row,
    dense_rank() OVER (ORDER BY file) AS file_number,
    list_max(list_transform(keys, lambda x, i: CASE WHEN x <> '' THEN i END)) AS width,
    list_position(keys, 'kind_of_row') AS kind_of_row,
    list_position(keys, 'class') AS class,
    list_position(keys, 'group') AS grp,
    list_position(keys, 'trial') AS trial,
    list_position(keys, 'compared_with') AS compared_with,
    list_position(keys, 'what_changed') AS what_changed,
    list_position(keys, 'changes') AS changes,
    list_position(keys, 'rules') AS rules,
    list_position(keys, 'rocket_length_mm') AS length_mm,
    list_position(keys, 'body_width_mm') AS width_mm,
    list_position(keys, 'mass_g') AS mass_g,
    list_position(keys, 'computed_centre_of_mass_mm') AS computed_mass_mm,
    list_position(keys, 'computed_centre_of_pressure_mm') AS computed_pressure_mm,
    list_position(keys, 'centre_of_mass_reading_1_mm') AS mass_1_mm,
    list_position(keys, 'centre_of_mass_reading_2_mm') AS mass_2_mm,
    list_position(keys, 'centre_of_mass_reading_3_mm') AS mass_3_mm,
    list_position(keys, 'centre_of_mass_middle_mm') AS mass_middle_mm,
    list_position(keys, 'centre_of_mass_range_mm') AS mass_range_mm,
    list_position(keys, 'centre_of_mass_readings') AS mass_count,
    list_position(keys, 'centre_of_pressure_reading_1_mm') AS pressure_1_mm,
    list_position(keys, 'centre_of_pressure_reading_2_mm') AS pressure_2_mm,
    list_position(keys, 'centre_of_pressure_reading_3_mm') AS pressure_3_mm,
    list_position(keys, 'centre_of_pressure_middle_mm') AS pressure_middle_mm,
    list_position(keys, 'centre_of_pressure_range_mm') AS pressure_range_mm,
    list_position(keys, 'centre_of_pressure_readings') AS pressure_count,
    list_position(keys, 'prediction') AS prediction,
    list_position(keys, 'prediction_swings_seen') AS swings_seen,
    list_position(keys, 'swing_1') AS swing_1,
    list_position(keys, 'swing_2') AS swing_2,
    list_position(keys, 'swing_3') AS swing_3,
    list_position(keys, 'swing_4') AS swing_4,
    list_position(keys, 'swing_5') AS swing_5,
    list_position(keys, 'swing_6') AS swing_6,
    list_position(keys, 'two_changes_allowed') AS two_changes_allowed,
    list_position(keys, 'swung_first') AS swung_first,
    list_position(keys, 'altered') AS altered,
    list_position(keys, 'example') AS example,
    list_position(keys, 'hidden') AS hidden,
    list_position(keys, 'marked') AS marked,
    list_position(keys, 'version') AS version,
    list_position(keys, 'delete_by') AS delete_by,
    list_position(keys, 'notebook') AS notebook,
    list_position(keys, 'statements') AS statements
FROM found
WHERE list_has_all(keys, ['kind_of_row', 'class', 'group', 'trial'])
    AND list_unique(keys) = list_count(list_filter(keys, lambda x: x <> '')) + list_contains(keys, '')::BIGINT;

-- What stands in each row, and what is wrong with it, asked in the order in which the page reads
-- cells.
CREATE OR REPLACE TABLE read AS
WITH lines AS (
    SELECT row_number() OVER () AS row, * FROM query(getvariable('rows_of_files'))
), cells AS (
    SELECT row, file,
        -- In the order of their names.
        coalesce(file_number, 0) * 1000000000000 + row AS place,
        heading_row IS NULL AS has_no_headings, row = heading_row AS is_headings,
        bare(array_to_string(cells, '')) AS whole,
        bare(array_to_string(cells[width + 1:], '')) AS beyond,
        plain(cells[what_changed]) AS what_changed_text, plain(cells[class]) AS class_text,
        bare(cells[COLUMNS(h.* EXCLUDE (heading_file, heading_row, next_row, file_number, width))])
    FROM lines LEFT JOIN headings AS h
        ON file = heading_file AND row >= heading_row AND row < next_row
), numbers AS (
    SELECT *, number(COLUMNS('^(.*_mm|mass_g|.*_count|trial|compared_with|changes|swings_seen|version)$'))
        AS '\1_is',
        coalesce(bare(class_text), '') AS label,
        regexp_extract(lower(grp),
            '^(red|orange|yellow|green|blue|purple|brown|black|grey|white|silver|gold)\s* \+?0*([1-9]|[123][0-9]|40)$',
            ['colour', 'number']) AS whose,
        coalesce(regexp_replace(plain(rules),
            '[\s\p{Z}\p{Cc}.\x{ad}\x{200b}-\x{200f}\x{2010}-\x{2015}\x{2212}\x{feff}-]', '', 'g'), '') AS code,
        list_filter([swing_1, swing_2, swing_3, swing_4, swing_5, swing_6], lambda x: x IS NOT NULL)
            .list_transform(lambda x: choice(x)) AS swings
    FROM cells
), kinds AS (
    SELECT * REPLACE (lower(kind_of_row) AS kind_of_row),
        regexp_full_match(label, '[A-Za-z0-9-]{0,12}') AS is_label,
        rules IS NULL OR regexp_full_match(code, '[0-9A-TV-Za-tv-z]{4}') AS is_code,
        no_count(version, version_is, 1, 1) AS is_newer
    FROM numbers
), asked AS (
    SELECT *,
        -- What holds no result: blank rows, what is said of a class, notebooks, headings.
        whole IS NULL OR coalesce(is_headings, false)
            OR kind_of_row = 'class' AND is_label AND is_code AND NOT is_newer
                AND coalesce(grp, trial, swing_1) IS NULL
            OR kind_of_row = 'notebook' AND is_label AND trial IS NULL AS is_passed_over,
        [length_mm_is, width_mm_is, mass_g_is, computed_mass_mm_is, computed_pressure_mm_is] AS model,
        CASE
            WHEN has_no_headings THEN 'headings'
            WHEN beyond IS NOT NULL THEN 'cells'
            WHEN NOT is_label THEN 'class'
            WHEN kind_of_row = 'class'
                THEN CASE WHEN is_newer THEN 'version' WHEN is_code THEN 'misplaced' ELSE 'rules' END
            WHEN kind_of_row = 'notebook' THEN 'notebook'
            WHEN kind_of_row IS NULL OR kind_of_row NOT IN ('result', 'older') THEN 'kind_of_row'
            WHEN coalesce(whose.colour, '') = '' THEN 'group'
            WHEN trial IS NULL OR no_count(trial, trial_is, 1, 65534) THEN 'trial'
            WHEN no_count(compared_with, compared_with_is, 1, 65534) THEN 'compared_with'
            WHEN length(what_changed_text) > 300 THEN 'what_changed'
            WHEN no_count(changes, changes_is, 0, 255) THEN 'changes'
            WHEN NOT is_code THEN 'rules'
            WHEN no_number(length_mm, length_mm_is) OR no_number(width_mm, width_mm_is)
                OR no_number(mass_g, mass_g_is)
                OR no_number(computed_mass_mm, computed_mass_mm_is)
                OR no_number(computed_pressure_mm, computed_pressure_mm_is)
                OR list_count(model) NOT IN (0, 5) THEN 'model'
            WHEN no_point(mass_1_mm, mass_1_mm_is, mass_2_mm, mass_2_mm_is, mass_3_mm, mass_3_mm_is,
                mass_middle_mm, mass_middle_mm_is, mass_range_mm, mass_range_mm_is,
                mass_count, mass_count_is) THEN 'centre_of_mass'
            WHEN no_point(pressure_1_mm, pressure_1_mm_is, pressure_2_mm, pressure_2_mm_is,
                pressure_3_mm, pressure_3_mm_is, pressure_middle_mm, pressure_middle_mm_is,
                pressure_range_mm, pressure_range_mm_is, pressure_count, pressure_count_is)
                THEN 'centre_of_pressure'
            WHEN no_outcome(prediction) OR choice(prediction) = 'slipped'
                OR no_count(swings_seen, swings_seen_is, 0, 6)
                OR prediction IS NULL AND swings_seen IS NOT NULL THEN 'prediction'
            WHEN no_outcome(swing_1) OR no_outcome(swing_2) OR no_outcome(swing_3)
                OR no_outcome(swing_4) OR no_outcome(swing_5) OR no_outcome(swing_6)
                -- Nothing stands behind the third that counts.
                OR len(list_filter(swings[:-2], lambda x: x <> 'slipped')) >= 3 THEN 'swings'
            WHEN no_flag(two_changes_allowed) OR no_flag(swung_first) OR no_flag(altered)
                OR no_flag(example) OR no_flag(hidden) OR no_flag(marked) THEN 'flags'
            WHEN coalesce(version, delete_by, notebook, statements) IS NOT NULL THEN 'misplaced'
        END AS unreadable
    FROM kinds
), typed AS (
    SELECT row, file, place, is_passed_over, unreadable, [class, grp, trial] AS as_written,
        nullif(what_changed_text, '') AS what_changed,
        upper(label) AS class, whose.colour || ' ' || whose.number AS grp, try_cast(trial_is AS BIGINT) AS trial,
        try_cast(compared_with_is AS BIGINT) AS compared_with, try_cast(changes_is AS BIGINT) AS changes,
        nullif(translate(upper(code), 'OIL', '011'), '') AS rules,
        tenth(length_mm_is) AS length_mm, tenth(width_mm_is) AS width_mm,
        tenth(mass_g_is) AS mass_g,
        tenth(computed_mass_mm_is) AS computed_mass_mm,
        tenth(computed_pressure_mm_is) AS computed_pressure_mm,
        [tenth(mass_1_mm_is), tenth(mass_2_mm_is), tenth(mass_3_mm_is)] AS mass_readings,
        [tenth(pressure_1_mm_is), tenth(pressure_2_mm_is), tenth(pressure_3_mm_is)]
            AS pressure_readings,
        tenth(mass_middle_mm_is) AS mass_middle_mm, tenth(mass_range_mm_is) AS mass_range_mm,
        try_cast(mass_count_is AS BIGINT) AS mass_count,
        tenth(pressure_middle_mm_is) AS pressure_middle_mm,
        tenth(pressure_range_mm_is) AS pressure_range_mm,
        try_cast(pressure_count_is AS BIGINT) AS pressure_count,
        choice(prediction) AS prediction,
        CASE WHEN prediction IS NOT NULL THEN coalesce(try_cast(swings_seen_is AS BIGINT), 0) END AS swings_seen,
        swings, list_filter(swings, lambda x: x <> 'slipped') AS counted,
        lower(two_changes_allowed) IS NOT DISTINCT FROM 'yes' AS two_changes_allowed,
        lower(swung_first) IS NOT DISTINCT FROM 'yes' AS swung_first,
        lower(altered) IS NOT DISTINCT FROM 'yes' AS altered,
        lower(example) IS NOT DISTINCT FROM 'yes' AS example,
        lower(hidden) IS NOT DISTINCT FROM 'yes' AS hidden,
        lower(marked) IS NOT DISTINCT FROM 'yes' AS marked
    FROM asked
), middles AS (
    -- Where there are readings they count, and else what somebody worked out of them.
    SELECT * EXCLUDE (mass_middle_mm, mass_range_mm, mass_count,
                      pressure_middle_mm, pressure_range_mm, pressure_count),
        CASE WHEN list_count(mass_readings) > 0 THEN tenth(middle(mass_readings))
            ELSE mass_middle_mm END AS mass_mm,
        CASE WHEN list_count(mass_readings) > 0
            THEN tenth(list_max(mass_readings) - list_min(mass_readings))
            WHEN mass_middle_mm IS NOT NULL THEN coalesce(mass_range_mm, 0) END AS mass_range_mm,
        CASE WHEN list_count(mass_readings) > 0 THEN list_count(mass_readings)
            WHEN mass_middle_mm IS NOT NULL THEN coalesce(mass_count, 1) END AS mass_count,
        CASE WHEN list_count(pressure_readings) > 0 THEN tenth(middle(pressure_readings))
            ELSE pressure_middle_mm END AS pressure_mm,
        CASE WHEN list_count(pressure_readings) > 0
            THEN tenth(list_max(pressure_readings) - list_min(pressure_readings))
            WHEN pressure_middle_mm IS NOT NULL THEN coalesce(pressure_range_mm, 0) END
            AS pressure_range_mm,
        CASE WHEN list_count(pressure_readings) > 0 THEN list_count(pressure_readings)
            WHEN pressure_middle_mm IS NOT NULL THEN coalesce(pressure_count, 1) END
            AS pressure_count
    FROM typed
)
SELECT * EXCLUDE (counted),
    CASE
        WHEN 2 * len(list_filter(counted, lambda x: x IN ('steady', 'wobbling'))) > len(counted)
            THEN true
        WHEN 2 * len(list_filter(counted, lambda x: x IN ('sideways', 'tail_first'))) > len(counted)
            THEN false
    END AS nose_first,
    CASE
        WHEN is_passed_over THEN 'passed over'
        WHEN unreadable IS NOT NULL THEN 'unreadable: ' || unreadable
        WHEN getvariable('rules') IS NOT NULL AND NOT example
            AND rules IS DISTINCT FROM getvariable('rules') THEN 'other rules'
        WHEN list_max(list_transform(
            [length_mm, width_mm, mass_g, computed_mass_mm, computed_pressure_mm,
            mass_mm, mass_range_mm, pressure_mm, pressure_range_mm]
            || mass_readings || pressure_readings, lambda x: abs(x))) > 10000
            THEN 'no number of a rocket'
        WHEN len(counted) < 3 THEN 'unfinished'
    END AS reason,
    -- All that the code of a result has room for: rows of a trial with the same are one.
    hash(compared_with, changes, rules, length_mm, width_mm, mass_g, computed_mass_mm,
        computed_pressure_mm, mass_mm, mass_range_mm, mass_count, pressure_mm, pressure_range_mm,
        pressure_count, prediction, swings_seen, swings, two_changes_allowed, swung_first, altered,
        example) AS essence
FROM middles;

-- Trials ------------------------------------------------------------------------------------

-- Of rows that are one the first stands, with what others of them have beside it.
CREATE OR REPLACE TABLE merged AS
WITH together AS (
    SELECT * EXCLUDE (file, row, is_passed_over, unreadable, reason, as_written, what_changed, mass_readings, pressure_readings,
                      hidden, marked),
        first_value(what_changed IGNORE NULLS) OVER same AS what_changed,
        first_value(given(mass_readings) IGNORE NULLS) OVER same AS mass_readings,
        first_value(given(pressure_readings) IGNORE NULLS) OVER same AS pressure_readings,
        bool_or(hidden) OVER of_trial AS hidden, bool_or(marked) OVER of_trial AS marked,
        row_number() OVER same AS nth
    FROM read
    WHERE reason IS NULL
    WINDOW of_trial AS (PARTITION BY class, grp, trial),
        same AS (PARTITION BY class, grp, trial, essence ORDER BY place
            ROWS BETWEEN UNBOUNDED PRECEDING AND UNBOUNDED FOLLOWING)
)
SELECT * EXCLUDE nth, place = max(place) OVER (PARTITION BY class, grp, trial) AS is_last
FROM together WHERE nth = 1;

CREATE OR REPLACE VIEW results AS
SELECT * EXCLUDE (essence, is_last),
    pressure_mm - mass_mm AS measured_separation_mm,
    computed_pressure_mm - computed_mass_mm AS computed_separation_mm
FROM merged WHERE is_last ORDER BY place;

CREATE OR REPLACE VIEW older AS
SELECT * EXCLUDE (essence, is_last) FROM merged WHERE NOT is_last ORDER BY place;

CREATE OR REPLACE VIEW refused AS
SELECT file, row - first_row + 1 AS line, kept(as_written[1]) AS class,
    kept(as_written[2]) AS "group", kept(as_written[3]) AS trial, rules, reason
FROM read JOIN (SELECT file, min(row) AS first_row FROM read GROUP BY file) USING (file)
WHERE reason <> 'passed over' ORDER BY place;

CREATE OR REPLACE VIEW counts AS
SELECT rows, results, older, taken_in - results - older AS doubled, rows - taken_in AS refused
FROM (SELECT count(*) AS rows, count(*) FILTER (reason IS NULL) AS taken_in
    FROM read WHERE reason IS DISTINCT FROM 'passed over')
CROSS JOIN (SELECT count(*) FILTER (is_last) AS results, count(*) FILTER (NOT is_last) AS older
    FROM merged);

-- Not what is hidden, and invented results only where there are no others.
CREATE OR REPLACE VIEW counting AS
SELECT * FROM results
WHERE NOT hidden AND (NOT example OR (SELECT bool_and(example) FROM results));

-- Along each of the separations that the chart of a class has.
CREATE OR REPLACE VIEW points AS
SELECT along, separation,
    count(*) FILTER (nose_first) AS nose_first, count(*) FILTER (NOT nose_first) AS otherwise
FROM (
    SELECT nose_first, unnest([
        {along: 'measured, in mm', separation: measured_separation_mm},
        {along: 'computed, in mm', separation: computed_separation_mm},
        {along: 'measured, in widths', separation: measured_separation_mm / nullif(width_mm, 0)},
        {along: 'computed, in widths', separation: computed_separation_mm / nullif(width_mm, 0)}
    ], recursive := true)
    FROM counting
)
WHERE separation IS NOT NULL AND nose_first IS NOT NULL
GROUP BY ALL ORDER BY ALL;

-- The same questions, by the same limits, as crates/lesson/src/class/odd.rs asks.
CREATE OR REPLACE VIEW odd AS
SELECT kept(class) AS class, grp AS "group", trial, unnest(list_filter([
    CASE WHEN mass_mm < 0 OR mass_mm > length_mm + 1 THEN 'centre of mass outside' END,
    CASE WHEN mass_range_mm > 0.15 * length_mm THEN 'centre of mass: wide range' END,
    CASE WHEN pressure_mm < 0 OR pressure_mm > length_mm + 1 THEN 'centre of pressure outside' END,
    CASE WHEN pressure_range_mm > 0.15 * length_mm THEN 'centre of pressure: wide range' END,
    CASE WHEN mass_count >= 3 AND pressure_count >= 3 AND mass_range_mm < 0.05
        AND pressure_range_mm < 0.05 THEN 'all readings equal' END,
    CASE WHEN abs(measured_separation_mm) > length_mm THEN 'longer than the rocket' END,
    CASE WHEN least(abs(mass_mm - computed_mass_mm), abs(pressure_mm - computed_pressure_mm)) > 8
        AND abs((mass_mm - computed_mass_mm) - (pressure_mm - computed_pressure_mm)) <= 3
        THEN 'same slip in both points' END,
    CASE WHEN length_mm IS NOT NULL
        AND abs(measured_separation_mm)
            > greatest(mass_range_mm + pressure_range_mm, 5, 0.1 * length_mm)
        AND nose_first <> (measured_separation_mm > 0) THEN 'other outcome than expected' END
], lambda x: x IS NOT NULL)) AS what
FROM counting;

CREATE OR REPLACE MACRO flag(value) AS CASE WHEN value THEN 'yes' END;

CREATE OR REPLACE VIEW class_table AS
SELECT CASE WHEN is_last THEN 'result' ELSE 'older' END AS kind_of_row,
    kept(class) AS class, grp AS "group", trial, compared_with, kept(what_changed) AS what_changed,
    changes, kept(rules) AS rules,
    length_mm AS rocket_length_mm, width_mm AS body_width_mm, mass_g,
    computed_mass_mm AS computed_centre_of_mass_mm,
    computed_pressure_mm AS computed_centre_of_pressure_mm,
    mass_readings[1] AS centre_of_mass_reading_1_mm,
    mass_readings[2] AS centre_of_mass_reading_2_mm,
    mass_readings[3] AS centre_of_mass_reading_3_mm,
    mass_mm AS centre_of_mass_middle_mm, mass_range_mm AS centre_of_mass_range_mm,
    mass_count AS centre_of_mass_readings,
    pressure_readings[1] AS centre_of_pressure_reading_1_mm,
    pressure_readings[2] AS centre_of_pressure_reading_2_mm,
    pressure_readings[3] AS centre_of_pressure_reading_3_mm,
    pressure_mm AS centre_of_pressure_middle_mm, pressure_range_mm AS centre_of_pressure_range_mm,
    pressure_count AS centre_of_pressure_readings,
    prediction, nullif(swings_seen, 0) AS prediction_swings_seen,
    swings[1] AS swing_1, swings[2] AS swing_2, swings[3] AS swing_3, swings[4] AS swing_4,
    swings[5] AS swing_5, swings[6] AS swing_6,
    flag(two_changes_allowed) AS two_changes_allowed, flag(swung_first) AS swung_first,
    flag(altered) AS altered, flag(example) AS example, flag(hidden) AS hidden,
    flag(marked) AS marked
FROM merged ORDER BY place;
