-- SPDX-License-Identifier: Apache-2.0
-- The first form of a journal.
--
-- In every table, unless a column says otherwise:
--   an id is 32 hexadecimal digits in small letters, and a column named as a table holds an id of it;
--   a day is YYYY-MM-DD; a day only about known has an earliest and a latest beside it, else these are NULL;
--   an instant is in milliseconds since 1970-01-01T00:00Z;
--   a season is the calendar year its first day lies in;
--   a length is in tenths of a millimetre, a temperature in thousandths of a degree Celsius; beside each, "_written" is
--   what the grower wrote, empty where it was worked out;
--   a kind is its word in small letters, and its group the class or division, empty where not said;
--   a text is in the grower's words and may be empty; NULL is "not known" or "none".

CREATE TABLE book (
    one      INTEGER NOT NULL PRIMARY KEY CHECK (one = 1), -- there is one row
    revision INTEGER NOT NULL CHECK (revision >= 0)        -- counts the writes of all windows
) STRICT;

-- What the journal says: one table for each type of entry.

CREATE TABLE settings (
    id           TEXT    NOT NULL PRIMARY KEY CHECK (id = '00000000000000000000000000000000'), -- there is one row
    zone         TEXT    NOT NULL, -- whose midnight begins a day, as 'Europe/London'
    season_start TEXT    NOT NULL CHECK (season_start GLOB '[01][0-9]-[0-3][0-9]'), -- MM-DD
    temperatures TEXT    NOT NULL CHECK (temperatures IN ('CELSIUS', 'FAHRENHEIT')), -- unit they are shown in
    lengths      TEXT    NOT NULL CHECK (lengths IN ('CENTIMETRES', 'INCHES')), -- unit they are shown in
    colours      TEXT    NOT NULL CHECK (colours IN ('ASK', 'DARK', 'LIGHT', 'EITHER', 'NONE')), -- the screen's background
    daily_care   INTEGER NOT NULL CHECK (daily_care IN (0, 1)) -- 1 when Today has a line for it
) STRICT;

CREATE TABLE own_kind (
    id         TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    name       TEXT NOT NULL, -- the kind's word
    letter     TEXT NOT NULL, -- the letter its labels begin with
    like_kind  TEXT, -- kind whose handbook figures it borrows
    like_group TEXT, -- its group
    CHECK ((like_kind IS NULL) = (like_group IS NULL))
) STRICT;

CREATE TABLE variety (
    id             TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    name           TEXT    NOT NULL CHECK (trim(name) <> ''), -- the cultivar's epithet without quotes
    packet_name    TEXT    NOT NULL, -- as the packet prints it, where that differs
    kind           TEXT    NOT NULL CHECK (trim(kind) <> ''), -- kind
    kind_group     TEXT    NOT NULL, -- its group
    height         INTEGER CHECK (height >= 0), -- full height in flower, 0.1 mm
    height_written TEXT    CHECK ((height IS NULL) = (height_written IS NULL)), -- as written
    bloom_season   TEXT    NOT NULL CHECK (bloom_season IN ('NOT_SAID', 'EARLY', 'MID', 'LATE')), -- among its kind, as catalogues say
    colour         TEXT    NOT NULL, -- text
    scent          TEXT    NOT NULL CHECK (scent IN ('NOT_SAID', 'NONE', 'LIGHT', 'STRONG')), -- how strong
    packet_forcing TEXT    NOT NULL CHECK (packet_forcing IN ('NOT_STATED', 'YES', 'NO')), -- what the packet says of it
    for_pots       TEXT    NOT NULL CHECK (for_pots IN ('NOT_MARKED', 'SUITS', 'TALL', 'UNSUITED')), -- the grower's own mark
    note           TEXT    NOT NULL  -- text
) STRICT;

CREATE TABLE own_figure (
    id         TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    variety    TEXT REFERENCES variety (id), -- the variety it holds for, if for one
    kind       TEXT, -- the kind it holds for, if for one; for all hardy kinds when this and variety are NULL
    kind_group TEXT, -- its group
    figure     TEXT NOT NULL, -- the figure's key in the handbook
    low        REAL, -- in the unit the handbook gives that figure; NULL, as the next two, where the handbook's was asked for
    typical    REAL CHECK (typical >= low), -- same unit
    high       REAL CHECK (high >= typical), -- same unit
    note       TEXT NOT NULL, -- text: why
    CHECK (variety IS NULL OR kind IS NULL),
    CHECK ((kind IS NULL) = (kind_group IS NULL)),
    CHECK ((low IS NULL) = (typical IS NULL) AND (low IS NULL) = (high IS NULL))
) STRICT;

CREATE TABLE place (
    id                 TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    name               TEXT    NOT NULL CHECK (trim(name) <> ''), -- text
    sort               TEXT    NOT NULL CHECK (sort IN ('FRIDGE', 'CELLAR', 'CRAWL_SPACE', 'COLD_FRAME', 'TRENCH', 'GARAGE',
                                                        'PORCH', 'COOL_ROOM', 'WARM_SILL', 'OTHER')), -- what it is
    serves             TEXT    NOT NULL CHECK (serves IN ('COLD', 'COOL_ROOM', 'WARM_ROOM')), -- stage of a pot that stands there
    usual_low          INTEGER, -- lowest usual temperature, 0.001 C
    usual_low_written  TEXT, -- as written
    usual_high         INTEGER CHECK (usual_high >= usual_low), -- highest usual temperature, 0.001 C
    usual_high_written TEXT, -- as written
    cold_from          TEXT    NOT NULL CHECK (cold_from GLOB '[01][0-9]-[0-3][0-9]'), -- first day it is cold, MM-DD
    cold_until         TEXT    NOT NULL CHECK (cold_until GLOB '[01][0-9]-[0-3][0-9]'), -- first day it no longer is, MM-DD; all year when the same
    light              TEXT    NOT NULL, -- text
    room               INTEGER, -- pots
    check_every        INTEGER NOT NULL CHECK (check_every >= 0), -- days from one round to the next; 0 is never
    bridges            INTEGER NOT NULL CHECK (bridges >= 0), -- longest time between two readings that is no gap, seconds
    hazards            TEXT    NOT NULL, -- any of FOOD FRUIT FROST MICE PETS CHILDREN FUMES ROTTING_BULBS COLD_WALL DOOR_AJAR UNHEATED_ROOM, parted by blanks
    note               TEXT    NOT NULL, -- text
    CHECK ((usual_low IS NULL) = (usual_high IS NULL)
           AND (usual_low IS NULL) = (usual_low_written IS NULL)
           AND (usual_high IS NULL) = (usual_high_written IS NULL))
) STRICT;

CREATE TABLE space (
    id            TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    place         TEXT    NOT NULL REFERENCES place (id), -- whose shelf it is
    width         INTEGER CHECK (width > 0), -- of the shelf, 0.1 mm
    width_written TEXT, -- as written
    depth         INTEGER CHECK (depth > 0), -- of the shelf from front to back, 0.1 mm
    depth_written TEXT, -- as written
    clear         INTEGER CHECK (clear >= 0), -- height above the shelf, 0.1 mm
    clear_written TEXT CHECK ((clear IS NULL) = (clear_written IS NULL)), -- as written
    there_from    TEXT    NOT NULL CHECK (there_from GLOB '[01][0-9]-[0-3][0-9]'), -- first day the place is there, MM-DD
    there_until   TEXT    NOT NULL CHECK (there_until GLOB '[01][0-9]-[0-3][0-9]'), -- first day it no longer is, MM-DD; all year when the same
    CHECK ((width IS NULL) = (depth IS NULL) AND (width IS NULL) = (width_written IS NULL) AND (width IS NULL) = (depth_written IS NULL))
) STRICT;

CREATE TABLE trench (
    id            TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    place         TEXT    NOT NULL REFERENCES place (id), -- where pots stand buried
    depth         INTEGER NOT NULL CHECK (depth > 0), -- of the bulbs below the surface of the ground, 0.1 mm
    depth_written TEXT    NOT NULL, -- as written
    soil          TEXT    NOT NULL CHECK (soil IN ('GARDEN_SOIL', 'DRY_SAND', 'SAND', 'WET_SAND', 'DRY_CLAY', 'CLAY', 'WET_CLAY',
                                                   'DRY_PEAT', 'PEAT', 'WET_PEAT')), -- what they are buried in
    cover         TEXT    CHECK (cover IN ('STRAW', 'LEAVES', 'BARK', 'SNOW')), -- what lies on the ground in winter
    thickness     INTEGER CHECK (thickness >= 0), -- of the cover, 0.1 mm
    thickness_written TEXT, -- as written
    conductivity  REAL    CHECK (conductivity > 0), -- of the cover, W/m/K; NULL for what is usual
    air           TEXT    REFERENCES place (id), -- whose thermometer says how warm the air is; NULL when the months are written
    spells        REAL    CHECK (spells > 0), -- standard deviation of ten days' means about the year's wave, C; NULL for what is usual
    CHECK ((cover IS NULL) = (thickness IS NULL) AND (cover IS NULL) = (thickness_written IS NULL)),
    CHECK (cover IS NOT NULL OR conductivity IS NULL)
) STRICT;

CREATE TABLE trench_month (
    trench       TEXT    NOT NULL REFERENCES trench (id) ON DELETE CASCADE, -- over which the air is
    position     INTEGER NOT NULL CHECK (position BETWEEN 0 AND 11), -- counted from 0 for January
    mean         INTEGER NOT NULL CHECK (mean >= -273150), -- mean temperature of the air, 0.001 C
    mean_written TEXT    NOT NULL, -- as written
    PRIMARY KEY (trench, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE purchase (
    id             TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    variety        TEXT    NOT NULL REFERENCES variety (id), -- what was bought
    season         INTEGER NOT NULL, -- season
    day            TEXT    NOT NULL CHECK (day IS date(day)), -- likely day it was ordered or came
    day_earliest   TEXT    CHECK (day_earliest IS date(day_earliest) AND day_earliest <= day), -- earliest
    day_latest     TEXT    CHECK (day_latest IS date(day_latest) AND day_latest >= day), -- latest
    bulbs          INTEGER NOT NULL CHECK (bulbs >= 1), -- count, as received or as ordered
    grade          TEXT    NOT NULL, -- size as the packet prints it; empty when not known
    across         INTEGER CHECK (across >= 0), -- measured across a bulb, 0.1 mm
    across_written TEXT    CHECK ((across IS NULL) = (across_written IS NULL)), -- as written
    price          INTEGER, -- altogether, in the currency's smallest unit
    currency       TEXT    CHECK ((price IS NULL) = (currency IS NULL)), -- ISO 4217; empty for the usual one
    supplier       TEXT    NOT NULL, -- text
    origin         TEXT    NOT NULL, -- text: where they were grown
    ordered        INTEGER CHECK (ordered >= 1), -- bulbs ordered, where another number came
    instead_of     TEXT    REFERENCES variety (id), -- what was ordered, where another variety was sent
    firm           INTEGER CHECK (firm >= 0), -- bulbs found firm on arrival, if counted
    soft           INTEGER CHECK (soft >= 0), -- bulbs found soft
    mouldy         INTEGER CHECK (mouldy >= 0), -- bulbs found mouldy
    arrival        TEXT    NOT NULL, -- text: state on arrival
    waits_in       TEXT    REFERENCES place (id), -- where they wait to be potted
    cooled_weeks   REAL    CHECK (cooled_weeks >= 0), -- weeks of dry cold before they came
    state          TEXT    NOT NULL CHECK (state IN ('TO_ORDER', 'ORDERED', 'IN_HAND', 'REJECTED')), -- where they are
    note           TEXT    NOT NULL, -- text
    CHECK ((day_earliest IS NULL) = (day_latest IS NULL))
) STRICT;

CREATE TABLE potting_mix (
    id   TEXT NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    name TEXT NOT NULL, -- its name, or that on the bag
    note TEXT NOT NULL  -- text
) STRICT;

CREATE TABLE potting_mix_part (
    potting_mix TEXT    NOT NULL REFERENCES potting_mix (id) ON DELETE CASCADE, -- whose part it is
    position    INTEGER NOT NULL, -- counted from 0
    parts       REAL    NOT NULL CHECK (parts > 0), -- parts by volume
    material    TEXT    NOT NULL, -- text
    PRIMARY KEY (potting_mix, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE container (
    id             TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    name           TEXT    NOT NULL, -- text
    shape          TEXT    NOT NULL CHECK (shape IN ('STANDARD', 'AZALEA', 'PAN', 'BOWL', 'GLASS', 'OUTER', 'OTHER')), -- its shape
    across         INTEGER CHECK (across >= 0), -- inside width at bulb depth, 0.1 mm
    across_written TEXT    CHECK ((across IS NULL) = (across_written IS NULL)), -- as written
    height         INTEGER CHECK (height >= 0), -- inside height, 0.1 mm
    height_written TEXT    CHECK ((height IS NULL) = (height_written IS NULL)), -- as written
    stock          INTEGER NOT NULL CHECK (stock >= 0), -- how many there are
    unwashed       INTEGER NOT NULL CHECK (unwashed >= 0), -- how many of those not in use want washing
    note           TEXT    NOT NULL  -- text
) STRICT;

CREATE TABLE usual_way (
    id             TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    name           TEXT    NOT NULL CHECK (trim(name) <> ''), -- text
    container      TEXT    REFERENCES container (id), -- the object its pots stand in
    across         INTEGER CHECK (across >= 0), -- inside width of its pots, where no container is named, 0.1 mm
    across_written TEXT    CHECK ((across IS NULL) = (across_written IS NULL)), -- as written
    potting_mix    TEXT    REFERENCES potting_mix (id), -- what they are filled with
    holes          TEXT    NOT NULL CHECK (holes IN ('NOT_SAID', 'PAPER', 'MESH', 'CROCKS', 'OPEN')), -- what lies over the holes
    depth          TEXT    NOT NULL CHECK (depth IN ('NOT_SAID', 'HALF_OUT', 'THIRD_OUT', 'TIPS_OUT', 'TIPS_LEVEL', 'JUST_COVERED',
                                                     'COVERED')), -- how deep the bulbs sit
    topping        TEXT    NOT NULL, -- text: what lies on the potting mix
    note           TEXT    NOT NULL  -- text
) STRICT;

CREATE TABLE pot (
    id             TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    season         INTEGER NOT NULL, -- season
    label          TEXT    NOT NULL, -- as pencilled on the stick; unique within the season when given
    way            TEXT    NOT NULL CHECK (way IN ('DRAINED', 'BOWL', 'GLASS', 'PEBBLES')), -- how it is grown
    container      TEXT    REFERENCES container (id), -- the object it stands in
    across         INTEGER CHECK (across >= 0), -- its inside width, where the container does not say, 0.1 mm
    across_written TEXT    CHECK ((across IS NULL) = (across_written IS NULL)), -- as written
    potting_mix    TEXT    REFERENCES potting_mix (id), -- what it is filled with
    usual_way      TEXT    NOT NULL, -- name that the way it was filled by had then; empty when by none
    holes          TEXT    NOT NULL CHECK (holes IN ('NOT_SAID', 'PAPER', 'MESH', 'CROCKS', 'OPEN')), -- what lies over the holes
    depth          TEXT    NOT NULL CHECK (depth IN ('NOT_SAID', 'HALF_OUT', 'THIRD_OUT', 'TIPS_OUT', 'TIPS_LEVEL', 'JUST_COVERED',
                                                     'COVERED')), -- how deep the bulbs sit
    topping        TEXT    NOT NULL, -- text: what lies on the potting mix
    batch          TEXT    CHECK (length(batch) = 32), -- an id shared by pots made together
    parent         TEXT    REFERENCES pot (id), -- pot of an earlier season whose plant lives on in it
    note           TEXT    NOT NULL  -- text
) STRICT;

CREATE TABLE planting (
    pot      TEXT    NOT NULL REFERENCES pot (id) ON DELETE CASCADE, -- what it is planted in
    position INTEGER NOT NULL, -- counted from 0; the first names the pot
    variety  TEXT    NOT NULL REFERENCES variety (id), -- what is planted
    bulbs    INTEGER NOT NULL CHECK (bulbs >= 1), -- count
    purchase TEXT    REFERENCES purchase (id), -- where they are from
    PRIMARY KEY (pot, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE event (
    id               TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    -- What it is about: one of these five.
    subject_pot      TEXT    REFERENCES pot (id), -- a pot
    subject_place    TEXT    REFERENCES place (id), -- a place
    subject_variety  TEXT    REFERENCES variety (id), -- a variety
    subject_purchase TEXT    REFERENCES purchase (id), -- a purchase
    subject_season   INTEGER, -- a whole season
    day              TEXT    NOT NULL CHECK (day IS date(day)), -- likely day it happened
    day_earliest     TEXT    CHECK (day_earliest IS date(day_earliest) AND day_earliest <= day), -- earliest
    day_latest       TEXT    CHECK (day_latest IS date(day_latest) AND day_latest >= day), -- latest
    order_in_day     INTEGER NOT NULL, -- its place among the events of its day
    written_at       INTEGER NOT NULL, -- instant it was first written down
    revised_at       INTEGER, -- instant it was last corrected
    what             TEXT    NOT NULL CHECK (what IN ('POTTED', 'MOVED', 'CHECKED', 'FLOWERED', 'CARED', 'CLOSED', 'PUT_OFF',
                                                      'LEFT_OUT', 'JOTTED', 'DISPLAYED')), -- what happened
    -- What more there is to say of it.
    text             TEXT, -- text: note of a check or an end, reason of an answer, the jotting, or the display it went into, empty when out of it
    place            TEXT    REFERENCES place (id), -- MOVED: where to
    stage            TEXT    CHECK (stage IN ('WAITING', 'COLD', 'COOL_ROOM', 'WARM_ROOM', 'IN_BLOOM', 'AFTER_BLOOM', 'DONE')), -- MOVED: its stage from then on
    moisture         TEXT    CHECK (moisture IN ('DRY', 'MOIST', 'WET')), -- CHECKED: of the potting mix, if looked at
    watered          INTEGER CHECK (watered IN (0, 1)), -- CHECKED: 1 when water was given then
    water            TEXT    CHECK (water IN ('LOW', 'RIGHT', 'HIGH')), -- CHECKED: how high the water stood at the base of the bulb, if looked at
    roots            TEXT    CHECK (roots IN ('NONE', 'SHOWING')), -- CHECKED: at the holes or in the glass, if looked at
    root_length      INTEGER CHECK (root_length >= 0), -- CHECKED: length of the roots if measured, 0.1 mm
    root_length_written TEXT CHECK ((root_length IS NULL) = (root_length_written IS NULL)), -- CHECKED: as written
    shoot            INTEGER CHECK (shoot >= 0), -- CHECKED: height above the bulb if measured, 0.1 mm
    shoot_written    TEXT    CHECK ((shoot IS NULL) = (shoot_written IS NULL)), -- CHECKED: as written
    firmness         TEXT    CHECK (firmness IN ('FIRM', 'SOFT')), -- CHECKED: how the bulb felt, if felt
    growth           TEXT, -- CHECKED: any of BUDS COLOUR, parted by blanks
    troubles         TEXT, -- CHECKED: any of MOULD MICE FROST ROT YELLOWING BLASTED CLOUDY OTHER, parted by blanks
    point            TEXT    CHECK (point IN ('FIRST_FLOWER', 'FULL_BLOOM', 'PAST_BLOOM')), -- FLOWERED: point of the bloom
    variety          TEXT    REFERENCES variety (id), -- FLOWERED: which of a mixed pot
    care             TEXT    CHECK (care IN ('WATERED', 'TOPPED_UP', 'WATER_CHANGED', 'TIPPED_OUT', 'SPIRIT_IN_WATER', 'FED', 'TURNED', 'STAKED',
                                             'HOODED', 'UNHOODED', 'REPOTTED', 'PLANTED_OUT', 'INTO_OUTER_POT', 'LEAVES_CUT', 'RESTED',
                                             'WOKEN', 'OUTDOORS', 'BROUGHT_IN', 'LIFTED', 'DUG', 'COVERED')), -- CARED: what was done
    ending           TEXT    CHECK (ending IN ('FINISHED', 'FAILED', 'SOLD', 'GIVEN', 'BROKEN', 'USED_UP')), -- CLOSED: how it ended
    job              TEXT    CHECK (job IN ('POT_UP', 'INTO_COLD', 'CHECK', 'BRING_IN', 'MOVE_TO_WARMTH', 'WATCH_FOR_FLOWER',
                                            'KEEP_COOL_IN_BLOOM', 'PAST_BLOOM', 'AFTERCARE', 'FEED', 'PUT_OUTDOORS', 'TAKE_INDOORS', 'START_REST',
                                            'WAKE', 'REPOT', 'WRITE_OUTCOME', 'DAILY_CARE', 'DIG_TRENCH', 'POTS_IN', 'COVER_TRENCH', 'LIFT_POTS')), -- PUT_OFF, LEFT_OUT: which job
    until            TEXT    CHECK (until IS date(until)), -- PUT_OFF: day it is put off to
    CHECK ((subject_pot IS NOT NULL) + (subject_place IS NOT NULL) + (subject_variety IS NOT NULL)
           + (subject_purchase IS NOT NULL) + (subject_season IS NOT NULL) = 1),
    CHECK ((day_earliest IS NULL) = (day_latest IS NULL)),
    CHECK (what <> 'MOVED' OR (place IS NOT NULL AND stage IS NOT NULL)),
    CHECK (what <> 'CHECKED' OR (watered IS NOT NULL AND growth IS NOT NULL AND troubles IS NOT NULL)),
    CHECK (what <> 'FLOWERED' OR point IS NOT NULL),
    CHECK (what <> 'CARED' OR care IS NOT NULL),
    CHECK (what <> 'CLOSED' OR ending IS NOT NULL),
    CHECK (what <> 'PUT_OFF' OR until IS NOT NULL),
    CHECK (what NOT IN ('PUT_OFF', 'LEFT_OUT') OR job IS NOT NULL),
    CHECK (what NOT IN ('CHECKED', 'CLOSED', 'PUT_OFF', 'LEFT_OUT', 'JOTTED', 'DISPLAYED') OR text IS NOT NULL)
) STRICT;

CREATE INDEX event_of_pot ON event (subject_pot);
CREATE INDEX event_of_closed_pot ON event (subject_pot) WHERE what = 'CLOSED';

CREATE TABLE span_reading (
    id            TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    place         TEXT    NOT NULL REFERENCES place (id), -- where the thermometer hangs
    reset         TEXT    NOT NULL CHECK (reset IS date(reset)), -- likely day it was last reset
    reset_earliest TEXT   CHECK (reset_earliest IS date(reset_earliest) AND reset_earliest <= reset), -- earliest
    reset_latest  TEXT    CHECK (reset_latest IS date(reset_latest) AND reset_latest >= reset), -- latest
    read          TEXT    NOT NULL CHECK (read IS date(read)), -- likely day it was read
    read_earliest TEXT    CHECK (read_earliest IS date(read_earliest) AND read_earliest <= read), -- earliest
    read_latest   TEXT    CHECK (read_latest IS date(read_latest) AND read_latest >= read), -- latest
    low           INTEGER NOT NULL CHECK (low >= -273150), -- lowest between the two, 0.001 C
    low_written   TEXT    NOT NULL, -- as written
    high          INTEGER NOT NULL CHECK (high >= low), -- highest between the two, 0.001 C
    high_written  TEXT    NOT NULL, -- as written
    CHECK ((reset_earliest IS NULL) = (reset_latest IS NULL)),
    CHECK ((read_earliest IS NULL) = (read_latest IS NULL))
) STRICT;

CREATE TABLE spot_reading (
    id          TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    place       TEXT    NOT NULL REFERENCES place (id), -- where the thermometer is
    at          INTEGER NOT NULL, -- instant
    temperature INTEGER NOT NULL CHECK (temperature >= -273150), -- as it was read, 0.001 C
    temperature_written TEXT NOT NULL -- as written
) STRICT;

CREATE TABLE thermometer (
    id          TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    place       TEXT    NOT NULL REFERENCES place (id), -- where it is
    lies        TEXT    NOT NULL, -- text: where in the place
    ice         INTEGER CHECK (ice >= -273150), -- what it read in ice water, if tried, 0.001 C
    ice_written TEXT    CHECK ((ice IS NULL) = (ice_written IS NULL)), -- as written
    tried       TEXT    CHECK (tried IS date(tried)), -- likely day it was tried
    tried_earliest TEXT CHECK (tried_earliest IS date(tried_earliest) AND tried_earliest <= tried), -- earliest
    tried_latest   TEXT CHECK (tried_latest IS date(tried_latest) AND tried_latest >= tried), -- latest
    CHECK ((ice IS NULL) = (tried IS NULL)),
    CHECK ((tried_earliest IS NULL) = (tried_latest IS NULL))
) STRICT;

CREATE TABLE reading_source (
    id         TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    place      TEXT    NOT NULL REFERENCES place (id), -- whose temperatures it has
    name       TEXT    NOT NULL, -- text: what it was called
    hash       TEXT    NOT NULL, -- SHA-256 of its bytes, hexadecimal digits in small letters
    readings   INTEGER NOT NULL CHECK (readings >= 0), -- count
    suspicious INTEGER NOT NULL CHECK (suspicious BETWEEN 0 AND readings), -- count of those that can hardly be true
    first      INTEGER NOT NULL, -- instant of its earliest
    last       INTEGER NOT NULL CHECK (last >= first) -- instant of its latest
) STRICT;

CREATE TABLE logger_profile (
    id           TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    place        TEXT    NOT NULL REFERENCES place (id), -- where the thermometer lies
    heading      TEXT    NOT NULL, -- text: the line of its files that names their columns; empty where none does
    parted_by    TEXT    NOT NULL CHECK (parted_by IN ('COMMA', 'SEMICOLON', 'TAB')), -- what parts the cells of that line, or of the first reading
    columns      INTEGER NOT NULL CHECK (columns > 0), -- count of these cells
    separator    TEXT    CHECK (separator IN ('COMMA', 'SEMICOLON', 'TAB')), -- what parts cells, as told; NULL where nothing was told, here and below
    decimal_sign TEXT    CHECK (decimal_sign IN ('POINT', 'COMMA')), -- of temperatures
    dates        TEXT    CHECK (dates IN ('DAY_MONTH_YEAR', 'MONTH_DAY_YEAR', 'YEAR_MONTH_DAY')), -- order of day, month and year
    unit         TEXT    CHECK (unit IN ('CELSIUS', 'FAHRENHEIT')), -- of temperatures
    zone         TEXT, -- name of a zone, or its distance from Greenwich: of its clock
    temperature_column INTEGER CHECK (temperature_column > 0), -- number of the column that is read, counted from 1
    device       TEXT -- text: whose readings are meant
) STRICT;

CREATE TABLE logger_profile_suspicious (
    logger_profile TEXT    NOT NULL REFERENCES logger_profile (id) ON DELETE CASCADE, -- of whose files
    position       INTEGER NOT NULL CHECK (position >= 0), -- counted from 0
    temperature    INTEGER NOT NULL, -- can hardly be true there, 0.001 C
    PRIMARY KEY (logger_profile, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE outcome (
    id             TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    pot            TEXT    NOT NULL REFERENCES pot (id), -- how this pot did
    variety        TEXT    REFERENCES variety (id), -- which of a mixed pot; NULL for the whole
    day            TEXT    NOT NULL CHECK (day IS date(day)), -- likely day it was judged
    day_earliest   TEXT    CHECK (day_earliest IS date(day_earliest) AND day_earliest <= day), -- earliest
    day_latest     TEXT    CHECK (day_latest IS date(day_latest) AND day_latest >= day), -- latest
    score          INTEGER CHECK (score BETWEEN 1 AND 5), -- 5 is best
    flowers        INTEGER, -- how many of the bulbs flowered
    height         INTEGER CHECK (height >= 0), -- in flower, 0.1 mm
    height_written TEXT    CHECK ((height IS NULL) = (height_written IS NULL)), -- as written
    first_good     TEXT    CHECK (first_good IS date(first_good)), -- first day it was good to look at
    last_good      TEXT    CHECK (last_good IS date(last_good)), -- last day it was
    signs          TEXT    NOT NULL, -- any of LEAVES_ONLY BROWN_BUD SHORT_AND_STUCK FLOPPY ROT NOTHING_CAME, parted by blanks
    roots          TEXT    CHECK (roots IN ('NONE', 'BROWN', 'WHITE', 'THROUGH')), -- what they were like, if the pot was turned out
    cut_bud        TEXT    NOT NULL, -- text: what a cut bud or bulb showed
    cause          TEXT    CHECK (cause IN ('COLD_SHORT', 'WARM_SPELL', 'FROZEN', 'TOO_WET_OR_DRY', 'FRUIT_NEAR', 'RUSHED')), -- of the failure, once confirmed
    evenness       TEXT    NOT NULL CHECK (evenness IN ('NOT_SAID', 'EVEN', 'SPREAD', 'RAGGED')), -- whether its flowers were one picture
    scent          TEXT    NOT NULL CHECK (scent IN ('NOT_SAID', 'NONE', 'LIGHT', 'STRONG')), -- as it was found
    again          TEXT    NOT NULL CHECK (again IN ('NOT_SAID', 'YES', 'NO', 'DIFFERENTLY')), -- whether to do it again
    how            TEXT    NOT NULL CHECK (how = '' OR again = 'DIFFERENTLY'), -- text: what to do differently
    note           TEXT    NOT NULL, -- text
    CHECK ((day_earliest IS NULL) = (day_latest IS NULL))
) STRICT;

CREATE INDEX outcome_of_pot ON outcome (pot);

CREATE TABLE wish (
    id         TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    season     INTEGER NOT NULL, -- season
    wished     TEXT    NOT NULL CHECK (wished IS date(wished)), -- first day it is wished for
    wished_to  TEXT    NOT NULL CHECK (wished_to IS date(wished_to) AND wished_to >= wished), -- last day it is
    feast      TEXT    NOT NULL, -- the feast it was written as; empty for a plain day
    manner     TEXT    NOT NULL CHECK (manner IN ('SOME_DAY', 'EVERY_DAY')), -- on one of the days, or on each
    pots       INTEGER NOT NULL CHECK (pots >= 1), -- how many should be in flower at once
    stage      TEXT    CHECK (stage IN ('BUD_COLOUR', 'FIRST_OPEN', 'FULL')), -- how far the flowers should be, if that is said
    kind       TEXT, -- kind wished for, if one is
    kind_group TEXT, -- its group
    colour     TEXT    NOT NULL, -- text that the variety's colour should hold; empty for any
    scented    INTEGER NOT NULL CHECK (scented IN (0, 1)), -- 1 when only what smells will do
    tallest    INTEGER CHECK (tallest >= 0), -- full height they may have, 0.1 mm
    tallest_written TEXT CHECK ((tallest IS NULL) = (tallest_written IS NULL)), -- as written
    room       TEXT    REFERENCES place (id), -- where they should stand in flower, if that is said
    note       TEXT    NOT NULL, -- text
    CHECK ((kind IS NULL) = (kind_group IS NULL))
) STRICT;

CREATE TABLE wish_pot (
    wish     TEXT    NOT NULL REFERENCES wish (id) ON DELETE CASCADE, -- which wish
    position INTEGER NOT NULL, -- counted from 0; without meaning
    pot      TEXT    NOT NULL REFERENCES pot (id), -- a pot meant to meet it
    PRIMARY KEY (wish, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE season_plan (
    id           TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    season       INTEGER NOT NULL, -- season
    name         TEXT    NOT NULL CHECK (trim(name) <> ''), -- short, as 'A'
    at_once      INTEGER NOT NULL CHECK (at_once >= 1), -- pots brought in together, by the rule it was made by
    every_days   INTEGER NOT NULL CHECK (every_days >= 1), -- days from one time to the next
    rule_from    TEXT    NOT NULL CHECK (rule_from IS date(rule_from)), -- first day of bringing in
    rule_to      TEXT    NOT NULL CHECK (rule_to IS date(rule_to) AND rule_to >= rule_from), -- last day of it
    potted_a_day INTEGER NOT NULL CHECK (potted_a_day >= 1), -- most pots that are potted on one day
    potting_days TEXT    NOT NULL, -- any of MONDAY to SUNDAY, parted by blanks; every day when empty
    least_unmet  INTEGER CHECK (least_unmet >= 0), -- pots that wishes lack in any plan; NULL, as the next two, when it was not searched for
    least_gap    INTEGER CHECK ((least_gap IS NULL) = (least_unmet IS NULL)), -- days without bloom in any plan that does as well at that
    least_pots   INTEGER CHECK ((least_pots IS NULL) = (least_unmet IS NULL)), -- pots in any plan that does as well at both
    adopted      TEXT    CHECK (adopted IS date(adopted)), -- day its pots were made
    note         TEXT    NOT NULL  -- text
) STRICT;

CREATE TABLE proposal (
    season_plan TEXT    NOT NULL REFERENCES season_plan (id) ON DELETE CASCADE, -- whose pot it is
    position    INTEGER NOT NULL, -- counted from 0
    variety     TEXT    NOT NULL REFERENCES variety (id), -- what is to be in it
    bulbs       INTEGER NOT NULL CHECK (bulbs >= 1), -- count
    purchase    TEXT    REFERENCES purchase (id), -- where they are from
    container   TEXT    REFERENCES container (id), -- what it is to stand in
    pot         TEXT    REFERENCES pot (id), -- the pot it is about, once that is there
    potting     TEXT    NOT NULL CHECK (potting IS date(potting)), -- day it is to be potted, or was
    cold        TEXT    REFERENCES place (id), -- where it has its cold
    brought_in  TEXT    NOT NULL CHECK (brought_in IS date(brought_in) AND brought_in >= potting), -- day it is brought in
    room        TEXT    REFERENCES place (id), -- where it flowers
    PRIMARY KEY (season_plan, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE intention (
    id          TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    pot         TEXT    NOT NULL REFERENCES pot (id), -- what is meant to go so
    season_plan TEXT    NOT NULL REFERENCES season_plan (id), -- by which plan
    potting     TEXT    NOT NULL CHECK (potting IS date(potting)), -- as in proposal
    cold        TEXT    REFERENCES place (id), -- as in proposal
    brought_in  TEXT    NOT NULL CHECK (brought_in IS date(brought_in) AND brought_in >= potting), -- as in proposal
    room        TEXT    REFERENCES place (id) -- as in proposal
) STRICT;

CREATE TABLE choice (
    id      TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    variety TEXT    NOT NULL REFERENCES variety (id), -- what is chosen or not
    season  INTEGER NOT NULL, -- season it is for
    mark    TEXT    NOT NULL CHECK (mark IN ('CHOSEN', 'SET_ASIDE', 'UNDECIDED')), -- what is meant to be done with it
    bulbs   INTEGER CHECK (bulbs >= 1), -- CHOSEN: count wanted
    reason  TEXT, -- SET_ASIDE: text
    CHECK ((mark = 'CHOSEN') = (bulbs IS NOT NULL)),
    CHECK ((mark = 'SET_ASIDE') = (reason IS NOT NULL))
) STRICT;

CREATE TABLE past_windows (
    id      TEXT    NOT NULL PRIMARY KEY CHECK (length(id) = 32 AND id NOT GLOB '*[^0-9a-f]*'),
    season  INTEGER NOT NULL, -- season before which they were foretold
    held    INTEGER NOT NULL CHECK (held BETWEEN 0 AND windows), -- count of those that would have held the day, had none been widened
    windows INTEGER NOT NULL, -- count of windows of learnt lengths whose day came
    reach   INTEGER NOT NULL CHECK (reach >= 0) -- hundredths of half a window that would have held 8 days of 10
) STRICT;

-- Temperatures read by a logger. There can be millions, at most 25 bytes each, so they name their place and source by short numbers. Keys that
-- are looked up for each row would cost as much as the row; that they hold is looked for by a check of the whole.

CREATE TABLE reading (
    place       INTEGER NOT NULL, -- number in reading_place
    at          INTEGER NOT NULL, -- seconds since 1970-01-01T00:00Z
    temperature INTEGER NOT NULL CHECK (temperature >= -273150 OR flags <> 0), -- as it was read, 0.001 C; what is suspicious may be any number
    source      INTEGER NOT NULL, -- number in taken_in
    line        INTEGER NOT NULL, -- its line there, counted from 1
    flags       INTEGER NOT NULL, -- sum of 1: suspicious, left out of sums
    PRIMARY KEY (place, at)
) STRICT, WITHOUT ROWID;

CREATE TABLE reading_place (
    number INTEGER NOT NULL PRIMARY KEY, -- short name of the place
    place  TEXT    NOT NULL UNIQUE -- its id; still said when the place is gone
) STRICT;

CREATE TABLE taken_in (
    number   INTEGER NOT NULL PRIMARY KEY, -- short name of the source
    source   TEXT    NOT NULL, -- its id in reading_source; still said while its step is taken back
    place    INTEGER NOT NULL, -- number in reading_place
    first_at INTEGER NOT NULL, -- seconds since 1970-01-01T00:00Z of its earliest reading
    last_at  INTEGER NOT NULL, -- of its latest
    step     INTEGER NOT NULL REFERENCES step (number) ON DELETE CASCADE -- the step that took it in
) STRICT;

CREATE INDEX taken_in_of_step ON taken_in (step);

CREATE TABLE original (
    taken_in INTEGER NOT NULL REFERENCES taken_in (number) ON DELETE CASCADE, -- whose
    position INTEGER NOT NULL, -- counted from 0
    bytes    BLOB    NOT NULL, -- a piece of the source's own bytes, compressed together (zlib)
    PRIMARY KEY (taken_in, position)
) STRICT;

-- What stands beside the content: not part of a dump, and nothing that is taken back.

CREATE TABLE step (
    number     INTEGER NOT NULL PRIMARY KEY, -- counted from 1 in the order they were done
    name       TEXT    NOT NULL, -- in plain words
    written_at INTEGER NOT NULL, -- instant it was done
    taken_back INTEGER NOT NULL CHECK (taken_back IN (0, 1)) -- 1 while it is; no step after it is in force then
) STRICT;

CREATE TABLE step_row (
    step       INTEGER NOT NULL REFERENCES step (number) ON DELETE CASCADE, -- the step that touched it
    position   INTEGER NOT NULL, -- counted from 0 in the order the step touched them
    table_name TEXT    NOT NULL, -- table of the entry touched
    id         TEXT    NOT NULL, -- its id there
    other      TEXT, -- its row on the other side of the step, as a JSON array in the order of the columns; NULL when it was not there
    parts      TEXT, -- the rows of its parts there, as a JSON array of such arrays; NULL when it cannot have any
    PRIMARY KEY (step, position)
) STRICT, WITHOUT ROWID;

CREATE TABLE step_reading (
    step        INTEGER NOT NULL REFERENCES step (number) ON DELETE CASCADE, -- the step that took readings in
    place       INTEGER NOT NULL, -- a reading that is on the other side of the step, this and the rest as in reading
    at          INTEGER NOT NULL, -- seconds since 1970-01-01T00:00Z
    temperature INTEGER NOT NULL, -- 0.001 C
    source      INTEGER NOT NULL, -- number in taken_in
    line        INTEGER NOT NULL, -- its line there
    flags       INTEGER NOT NULL, -- as in reading
    PRIMARY KEY (step, place, at)
) STRICT, WITHOUT ROWID;

-- What the readings come to: worked out from them, and at any time anew.

CREATE TABLE day_read (
    place     TEXT    NOT NULL, -- id of the place
    day       TEXT    NOT NULL, -- the day
    readings  INTEGER NOT NULL, -- count on that day
    known     REAL    NOT NULL, -- hours that are accounted for
    effective REAL    NOT NULL, -- hours that count as cold, by weight
    published REAL    NOT NULL, -- the same as published schedules count
    freezing  REAL    NOT NULL, -- hours below 0 C
    warm      REAL    NOT NULL, -- hours above 13 C
    mean      INTEGER NOT NULL, -- of the hours known, 0.001 C
    lowest    INTEGER NOT NULL, -- of the hours known, 0.001 C
    highest   INTEGER NOT NULL, -- of the hours known, 0.001 C
    PRIMARY KEY (place, day)
) STRICT, WITHOUT ROWID;

CREATE TABLE day_basis (
    place      TEXT    NOT NULL PRIMARY KEY, -- id of a place whose days are worked out
    zone       TEXT    NOT NULL, -- whose midnights part them
    bridges    INTEGER NOT NULL, -- longest time between two readings that is no gap, seconds
    correction INTEGER NOT NULL -- added to what is read there, 0.001 C
) STRICT, WITHOUT ROWID;

CREATE TABLE kept_window (
    number   INTEGER NOT NULL PRIMARY KEY, -- in the order they were made
    step     INTEGER REFERENCES step (number) ON DELETE CASCADE, -- the step it was kept with; of one the journal began with none
    pot      TEXT    NOT NULL, -- the pot it was foretold of; still said when the pot is gone
    stage    TEXT    NOT NULL, -- which stage was to begin
    made_on  TEXT    NOT NULL CHECK (made_on IS date(made_on)), -- day it was foretold
    earliest TEXT    NOT NULL CHECK (earliest IS date(earliest)), -- day
    likely   TEXT    NOT NULL CHECK (likely IS date(likely)), -- day
    latest   TEXT    NOT NULL CHECK (latest IS date(latest)), -- day
    basis    TEXT    NOT NULL -- what it rested on, in a few words
) STRICT;

CREATE INDEX kept_window_of_step ON kept_window (step); -- a step that goes looks for its own

CREATE INDEX kept_window_of_pot ON kept_window (pot);

CREATE TABLE tombstone (
    table_name TEXT    NOT NULL, -- table of an entry that is gone
    id         TEXT    NOT NULL, -- its id there; when copies of a journal are merged it does not come back
    removed_at INTEGER NOT NULL, -- instant
    PRIMARY KEY (table_name, id)
) STRICT, WITHOUT ROWID;

INSERT INTO book (one, revision) VALUES (1, 0);
