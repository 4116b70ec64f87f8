# What rooftend says, in English. One phrase a key; the other languages have the same keys.
# A line that begins with a value in braces is filled by the program: {$bed}, {$turn} and so on.

## Small pieces

day = { $weekday } { $date } { $month }
day-either-way = about { $day }, a day either way
day-span = about { $day } ({ $low } to { $high })
span = { $low } to { $high }
and-last = { $all } and { $last }
weekday-0 = Mon
weekday-1 = Tue
weekday-2 = Wed
weekday-3 = Thu
weekday-4 = Fri
weekday-5 = Sat
weekday-6 = Sun
month-1 = Jan
month-2 = Feb
month-3 = Mar
month-4 = Apr
month-5 = May
month-6 = Jun
month-7 = Jul
month-8 = Aug
month-9 = Sep
month-10 = Oct
month-11 = Nov
month-12 = Dec
unit-L = { $n } L
unit-ml = { $n } ml
unit-kg = { $n } kg
unit-g = { $n } g
unit-mm = { $n } mm
unit-m = { $n } m
unit-m2 = { $n } m²
unit-ft = { $n } ft
unit-in = { $n } in
unit-cm = { $n } cm
unit-ft2 = { $n } sq ft
unit-percent = { $n } %
unit-celsius = { $n } °C
unit-ml-per-l = { $n } ml per litre
unit-g-per-l = { $n } g per litre
unit-kn-m2 = { $n } kN/m²
bed-described =
    { $kind ->
        [tray] tray of { $size }
        [pot] { $size } pot
        [basket] { $size } basket
        [bag] { $size } bag
       *[box] box of { $size }
    }

## Water

water-past-heat =
    { $crop } is past its limit in this heat: { $tmax } by day, and above { $limit } it { $beyond ->
        [bolts] runs to flower
        [turns-bitter] turns bitter
        [drops-flowers] drops its flowers
        [scorches] scorches
       *[stops] stops growing
    }. Water keeps it alive; it won't make it thrive.
water-past-cold = { $crop } is below its limit in this cold: nights of { $tmin }, and below { $limit } it suffers. It drinks little now.
water-rhythm =
    { $rhythm ->
        [none] No watering for the { $bed } this week: the rain brings more than it loses.
        [weekly] About { $turn } for the { $bed }, once this week ({ $week } in all).
        [third] About { $turn } every third morning for the { $bed } ({ $week } over the week).
        [second] About { $turn } every second morning for the { $bed } ({ $week } over the week).
        [daily] About { $turn } each morning for the { $bed } ({ $week } over the week).
        [twice] About { $turn } each morning and { $turn } each evening for the { $bed } ({ $week } over the week).
       *[thrice] About { $turn } three times a day for the { $bed }: early morning, noon in the shade, evening ({ $week } over the week).
    }
water-more-beds = And { $count } more beds; ask for one by name.
water-all-beds = All of them together: { $day } a day.
water-reason =
    It loses { $loss } a day { $air ->
        [dry] at { $tmax } in dry air.
        [wet] with { $rain } of rain due this week.
       *[plain] with days up to { $tmax }.
    }
water-check =
    { $hot ->
        [hot] Run the hose cool first; skip a turn if it is still moist a finger-joint down.
       *[mild] Skip a turn if it is still moist a finger-joint down.
    }
assumed-bed = I don't have your bed: this is for a { $bed } with 6 h of sun. Tell me yours for a better figure.
assumed-sun = I took { $hours } h of direct sun; say if it is more or less.
assumed-usual-days = No forecast for your roof; these are usual days for the season at { $place }, so the range is wide.
ask-which-bed = Which bed do you mean?
ask-what-bed = Which crop, and how big is its bed? Something like: tomato in a 12 inch pot.
ask-which-place = Which city are you in? I need its weather for that.
choice-bed = { $bed }
choice-place = { $place }
choice-size = { $size }
choice-article = { $title }
choice-water = How much water does the tomato bag need?
choice-harvest = When is the mustard tray ready?
choice-person = Let me talk to someone

## Why: water

working-bed = For the { $bed }:
working-forecast = Weather: the forecast of { $day }, day by day.
working-forecast-undated = Weather: the forecast file, day by day; it does not say when it was made.
working-usual-days = Weather: usual days at { $place } ({ $period }, { $distance } km away) on { $days } of the 7 days; real days differ from them.
working-no-weather = Weather: none known.
working-reference = Reference evapotranspiration in the open: { $et } a day ({ $source }, Penman-Monteith).
working-procedure =
    Not measured: { $what ->
        [sunshine] radiation, taken from the hours of sunshine
        [solar] radiation, taken from the day's range of temperature
        [dew-point] humidity, taken from the night's minimum
        [humidity-mean] vapour pressure, taken from the mean humidity
        [wind] wind, taken as 2 m/s
       *[sunless] cloudiness of a day without sun, assumed
    } ({ $source }).
working-light = With { $hours } h of direct sun{ $shade ->
        [open] {""}
       *[net] {" "}under a net that cuts { $net }
    }, the bed's own rate is { $et } a day (beam by eq. 28; diffuse part by Erbs, Klein and Duffie 1982).
working-coefficients = Crop coefficient: leaves { $basal } + bare wet surface { $evaporation }, at most { $highest } (fao56: eq. 70 to 76; 5 % more for a small stand on a roof, a judgement).
working-loss = Loss with the drying sides: { $loss } a day over { $area } = { $day } a day; rain of the week { $rain }.
working-surface = Top: the bare part loses { $bare } a day (fao56: eq. 77) and looks dry after { $limit } (common practice, no source).
working-roots = Roots may take { $limit } before they go short (fao56: eq. 83 with the mix's easily available water). The sooner of the two decides: { $decides ->
        [surface] the top.
       *[roots] the roots.
    }
working-rhythm =
    That makes { $often } waterings a week; the rhythm to keep: { $rhythm ->
        [none] none
        [weekly] once a week
        [third] every third day
        [second] every other day
        [daily] once a day
        [twice] twice a day
       *[thrice] three times a day
    }.
working-doubt =
    The range claims nine times in ten, as a judgement; the largest doubt is { $doubt ->
        [sun-spell] at what time of day the sun reaches the bed
        [weather] the weather itself
        [small-stand] how much more a small bed on a hot roof loses
        [sides] how fast the sides dry
        [leaves] how much the leaves transpire
        [wind] the wind, which is not known
        [humidity] the humidity, which is not known
        [rain] how much rain comes
        [surface-limit] when the top looks dry
       *[root-limit] how much water the mix gives
    }.

## Harvest

harvest-first =
    { $when ->
        [now] { $crop } ({ $bed }) has been ready to pick since { $day }: look today.
        [past] { $crop } ({ $bed }) was ready { $day } and is past its picking time: look today, and clear it if it is done.
       *[ahead] { $way ->
            [tray] { $crop }, { $bed }: ready to cut { $day }.
           *[bed] { $crop }, { $bed }: first pick { $day }.
        }
    }
harvest-reason = Counted over days of { $tmax } and nights of { $tmin }: some { $days } days in all.
harvest-other-start = Only one date is known, so the time in the seedbed is a guess; trust the eye more than the day.
harvest-signs = { $signs }
harvest-expected = Expect { $grams } in all.
harvest-say-when =
    { $how ->
        [planted] When was the { $crop } planted out? Then I can give the day.
       *[sown] When was the { $crop } sown? Then I can give the day.
    }
ask-what-grows = What grows in the { $bed }, and since when?
ask-which-crop = Which crop do you mean, and when was it sown?
working-thermal-time =
    { $crop }, { $how ->
        [planted] planted { $day }
       *[sown] sown { $day }
    }: needs { $sum } degree days above { $base }, none gained above { $upper } ({ $source }).
working-harvest-days = { $days } of the days counted are usual days of { $place }, not a forecast.
working-claim = The range claims nine times in ten, as a judgement: seed lots and days differ.
working-yield = Yield: { $grams } from { $area } ({ $source }).

## Mix and build

mix-recipe = { $mix }, by volume: { $parts }. Tell me the size and I give the litres.
mix-litres =
    { $count ->
        [1] { $litres } of loose mix for the { $bed }; it settles to { $settled }.
       *[other] { $litres } of loose mix for { $count } of the { $bed }; it settles to { $settled }.
    }
mix-parts = { $parts }.
mix-part = { $material } { $amount }
mix-share = { $percent } { $material }
mix-addition = { $grams } g { $material } a litre
build-parts = For the { $bed }: { $trays } drainage trays of { $tray }, { $sides } of side { $height } high, { $cloth } of lining cloth, { $wire } of wire.
assumed-depth = Depth was not said; I took { $depth }.
assumed-tray = Trays taken as { $tray }; say if yours are another size.
ask-size = What size is the box? Length and width, and how deep.
working-mix = Settled { $settled } with { $rim } left free below the edge; loose mix loses { $settling } as it settles, so { $loose }.
working-recipe = { $mix }: { $parts }.
working-trays = Trays lie all one way and lock edge to edge: { $along } along by { $across } across, the fewer of the two ways.
working-parts = Sides go once round; cloth lines bottom and sides in one piece with 10 cm over the edge; a 40 cm tie each 15 cm of height at four corners (common practice, no source).

## Care, hand-over, none

article = { $answer }
working-article = From the article: { $title }.
which-article = Which of these do you mean?
handed-over-person = I have asked the crew: someone will get back to you here.
handed-over-kind =
    I can't work out { $kind ->
        [sow] what to sow when
        [shade] nets and shade
        [spray] sprays
        [feed] feeds
        [load] a roof's load
        [space] spacing
        [seed] seed amounts
        [trouble] what ails a plant
        [due] what is due
       *[other] that
    } yet, so I have passed your question to the crew.
handed-over-unknown = I don't have a good answer to that. I have passed it to the crew: someone will get back to you here.
declined = That is not something I can help with. I know about beds, water, sowing and harvest on your roof.
not-understood = I did not get that. You can ask, for example:

## Records

recorded-job =
    Noted: { $job ->
        [water] watered
        [spray] sprayed
        [feed] fed
        [flush] flushed
        [thin] thinned
        [prune] pruned
        [stake] staked
        [pick] picked
        [pull] pulled
        [net] net
        [mix] new mix
        [top-up] topped up
        [clear] cleared
        [mend] mended
       *[check] checked
    }{ $amount ->
        [none] {""}
       *[other] , { $amount }
    }, { $beds }, { $day }.
recorded-sown =
    Noted: { $crop } { $how ->
        [planted] planted
       *[sown] sown
    } in the { $beds }, { $day }.
recorded-seen =
    Noted for { $beds }, { $day }: { $what ->
        [still-wet] still wet
        [dry-early] dry before its time
       *[ran-through] water ran through
    }.
record-stranger = I don't know you yet, so I can't keep records for you. Ask the crew to add you.
record-future = { $day } is still to come. On which day was it done?
record-not-yours = You can't record work on { $bed }.
record-no-bed = You have no bed here yet. I have passed this to the crew.
record-unknown = I could not make out what was done, so nothing is stored; I have passed it to the crew.
record-which-crop = Which crop was it?
record-not-kept = I could not store that: it is not recorded. Please try again.

## Cautions

caution = Caution: { $text }
caution-text = { $text }
caution-weight = soaked, this weighs up to { $weight } before plants and people. Ask a structural engineer who has seen the roof before you build; I can't tell you that it holds.
caution-load = I can't tell you that a roof or balcony holds. Ask a structural engineer who has seen the slab, and keep heavy things from the edge until then.
caution-spray = the label decides dose and waiting time; not in sun or wind, and with gloves and mask.

## Front

demo-greeting = This is a made-up garden in Nagpur with invented clients and weather. Three things to try:
demo-note = (demo: an invented garden and invented weather, in a store that is thrown away)

## Sow

# (end of: Sow)

## Shade

# (end of: Shade)

## Spray

spray-next =
    { $part ->
        [evening] { $bed }: spray { $material } on { $day }, in the evening from { $from } to { $until }.
        [dawn] { $bed }: spray { $material } on { $day }, before the sun is up, from { $from } to { $until }. The rest of the day is too hot.
        [day] { $bed }: { $material } again on { $day }, in the cool of the evening, not above { $limit }.
       *[none] { $bed }: { $material } is due, but I find no fit hour in the next ten days (dry, calm, not above { $limit }). Wash the insects off with a firm jet at dawn instead.
    }
spray-last = The last one was on { $last }; it goes on every { $every } days.
spray-no-record = I have no spray of it noted: if there was one, tell me the day. It goes on every { $every } days.
spray-moved = Moved to that day because of { $by }.
spray-obstacle =
    { $what ->
        [rain] rain
        [wind] wind
       *[heat] heat
    }
spray-usual-day = No forecast reaches that day, so rain and wind are not counted: look at the sky.
spray-look = Pick what is ready first, and spray only where you find insects under the leaves.
spray-tray = Nothing is sprayed on a sprouting tray: it is cut within days and eaten whole. Give it air and less water; throw out a mouldy patch.
spray-strength = Plain { $material }: start at { $start } ml per litre of water; { $dose } ml are used, never more than { $limit } ml.
spray-add-soap = A few drops of mild soap let the oil mix; shake often.
spray-into = For { $volume } of water that is { $amount }.
spray-test-leaf = Try two leaves and wait a day; use it the same evening, never above { $limit }.
spray-liquid = { $bed }: about { $litres } of liquid wets the leaves on both sides.
spray-which-product = Which product is it?
spray-which-bottle = What is in the bottle of { $material }? The right dose differs many times over.
spray-what-was-it = What was sprayed? The name on the bottle decides how long to wait. Until then, do not pick.
spray-bottle-unknown = Then I give no dose for { $material }: too strong burns leaves. Send the crew a photo of the label; I have passed this on.
spray-by-label = A concentrate of { $material } goes by its own label only, and never above it: bottles differ many times over in strength.
choice-plain-oil = plain cold-pressed oil
choice-concentrate = a concentrate
choice-not-known = I don't know
choice-material = { $material }
choice-other-product = another product
spray-wait = After { $material }: { $days } days before picking, longer if the label says so. Rinse what you pick.
spray-pick-from = { $material } sprayed on { $on }: pick from { $from } on, later if the label says so. Rinse what you pick.
spray-taste = The label's own wait decides and may be shorter; { $days } days are for the taste to go.
spray-from-record = I took the last spray noted for this bed; say if it was another.
spray-no-stronger = No: never more than { $limit } ml of { $material } per litre. More burns leaves and kills no faster. Check that it reaches under the leaves, and repeat after a week.
spray-no-double = No: not more than the label says, whatever the product. More burns leaves and stays on food, and does not work faster. Tell the crew its name; I have passed this on.
spray-with-soap = Yes, a little plain soft soap goes with neem oil: a few drops a litre, so that it mixes. Nothing else in that bottle.
spray-not-together = No: one product at a time, each by its own label. Oil with sulphur or copper scorches leaves, and the labels ask for weeks between.
spray-tender = I can't tell you that it is safe. No one and no animal should be near while it is sprayed or until it is dry, and the label may ask for longer. I have passed it to the crew.
spray-label =
    { $what ->
        [wait] Don't pick or eat it yet. Only the label of that product says how many days to wait: read it, or tell the crew its name. I have passed this on.
       *[dose] I give no dose for that product: its label decides, and it must be labelled for this crop. The agricultural office can say more. I have passed this to the crew.
    }
spray-against = { $steps }
caution-poison = keep children and animals away, and don't eat from it before the label's days are over. If someone swallowed some or feels ill, call a doctor or poison centre with the bottle in hand.
caution-wait = this holds only for that product; if the label says longer, the label counts.
caution-bees = not while bees are on the flowers.
working-spray-rhythm = Rhythm: every { $every } days ({ $source }), so it is due { $due }.
working-spray-hours = Air by the hour from { $tmin } and { $tmax } (parton-logan-1981: daily curve), at most { $warmest } until the leaf is dry; limit { $limit }. The curve may be 2 °C off: look at a thermometer.
working-spray-liquid = Liquid: leaves over { $ground } of ground, 1 to 3 m² of leaf on each m², 100 to 350 ml on each m² of leaf (a judgement).
working-spray-strength = Strength: { $dose } ml per litre ({ $source }), held below the lowest limit of any source, { $limit } ml ({ $limited }).
working-spray-wait = Wait before picking: { $days } days ({ $source }).

# (end of: Spray)

## Feed

feed-next =
    { $began ->
        [last] { $bed }: next feed { $day }; every { $every } days, the last was on { $last }.
        [mix] { $bed }: the new mix still feeds it; first feed { $day }, then every { $every } days.
        [used-up] { $bed }: the mix is used up and no feed is noted, so feed now, then every { $every } days.
       *[unknown] { $bed }: feed every { $every } days. I have no feed noted: if there was one, count from that day.
    }
feed-next-rhythm = Next feed { $day }: every { $every } days is the usual rhythm. I don't know that crop well, so keep it thin.
feed-strew = { $material }: { $grams } over the whole bed, a hand away from the stems, scratched in and watered.
feed-strew-area = { $material }, dry: { $grams } g a square metre, a hand away from the stems, scratched in and watered.
feed-steep = { $material }: soak it for some days, strain, and thin it to weak tea, { $grams } g of cake in each litre poured.
feed-dig-in = Dry, only dug into an empty bed two weeks before sowing: { $grams }. Never dry round standing plants.
feed-dissolve = { $material }: { $grams } g in a litre of water, on moist mix.
feed-pour = { $material }: { $millilitres } ml in a litre of water, on moist mix.
feed-how =
    { $hot ->
        [hot] That is half of the usual, for a day of { $tmax }: water first, feed in the evening.
       *[mild] Water first, feed in the evening; weak and often beats strong.
    }
feed-no-amount = I have no sure amount for that feed: keep to its label, or ask the crew.
feed-short = By the sum the bed falls { $grams } g of nitrogen short within a month. Pale old leaves would show it.
feed-tray = A sprouting tray needs no feed: the seed feeds the shoots until they are cut.
feed-tonic = It does no harm in small amounts but is hardly food: peels and kitchen waste do more through the compost heap. Keep to compost or vermicompost for feeding.
feed-label = By its label only: how many grams a litre a manufactured feed takes differs by product. I give no figure and have passed it to the crew.
feed-too-much = Act now: take out what lies on top, then run plain water through until it flows freely below, wait an hour, and again two or three times. No feed for a month; shade it for some days.
caution-feed = no feed on dry mix or a drooping plant; keep liquid feed off leaves that are eaten raw, and wash what you pick.
caution-label-feed = never more than the label, on moist mix only; too much burns roots.
caution-overfed = don't eat from it until the crew has looked; if leaves turn brown or wilt, it may be lost.
working-nitrogen = Nitrogen since { $day }, a month ahead counted: mix and feeds release { $released } g that plants can use (40 to 80 % of it, a judgement), crops take { $taken } g, short by { $short } g.

# (end of: Feed)

## Load

# (end of: Load)

## Space and seed

# (end of: Space and seed)

## Water: away, salts, what was seen

# (end of: Water: away, salts, what was seen)
