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
        [once] About { $turn } in one go, once a day, for the { $bed } ({ $week } over the week).
        [daily] About { $turn } each morning for the { $bed } ({ $week } over the week).
        [twice] About { $turn } each morning and { $turn } each evening for the { $bed } ({ $week } over the week).
       *[thrice] About { $turn } three times a day for the { $bed }: early morning, noon in the shade, evening ({ $week } over the week).
    }
water-more-beds =
    { $count ->
        [1] And one more bed; ask for it by name.
       *[other] And { $count } more beds; ask for one by name.
    }
water-all-beds = All of them together: { $day } a day.
water-reason =
    It loses { $loss } a day { $air ->
        [dry] at { $tmax } in dry air.
        [wet] with { $rain } of rain due this week.
        [wet-usual] with { $rain } of rain in such a week.
       *[plain] with days up to { $tmax }.
    }
water-check =
    { $hot ->
        [hot] Run the hose cool first; skip a turn if it is still moist a finger-joint down.
       *[mild] Skip a turn if it is still moist a finger-joint down.
    }
assumed-bed = I don't have your bed: this is for a { $bed } with 6 h of sun. Tell me yours for a better figure.
assumed-sun = I took { $hours } h of direct sun; say if it is more or less.
assumed-net = I took the net to cut { $cut } of the light; say if it is another.
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
working-dry-air = That humidity would be too high for a dry place: the year's rain is { $index } of what the air draws (semi-arid below { $limit }; { $class }), so the dew point is taken { $kelvins } °C below the night's minimum ({ $source }).
working-showers = Usual rain: { $rain } on some { $days } of the 7 days, the rest dry (days from the month's amount, a judgement). A wet day fills the bed; waterings are counted over the dry days between.
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
        [bed] how fast this one bed dries
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
working-yield =
    { $spreads ->
        [yes] Yield: { $grams } from { $area } of ground that its leaves take, more than the top of the bed ({ $source }); the low end is drawn down because the root run is small (a judgement).
       *[no] Yield: { $grams } from { $area } ({ $source }).
    }

## Mix and build

mix-of-litres = { $litres } of loose mix, which settles to about { $settled }:
mix-recipe = { $mix }, by volume: { $parts }. Tell me the size and I give the litres.
mix-litres =
    { $count ->
        [1] { $litres } of loose mix for the { $bed }; it settles to { $settled }.
       *[other] { $litres } of loose mix for { $count } × { $bed }; it settles to { $settled }.
    }
mix-parts = { $parts }.
mix-part = { $material } { $amount }
mix-share = { $percent } { $material }
mix-addition = { $grams } g { $material } a litre
build-parts = For the { $bed }: { $trays } drainage trays of { $tray }{ $said ->
        [no] {" "}(taken; say if yours differ)
       *[yes] {""}
    }, { $sides } of side { $height } high, { $cloth } of lining cloth, { $wire } of wire.
assumed-depth = Depth was not said; I took { $depth }.
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
mix-without = My recipes all hold { $material }: I have none that was tried without it. I have passed it to the crew.
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
        [weed] weeded
        [prune] pruned
        [stake] staked
        [pick] picked
        [pull] pulled
        [net] net
        [mix] new mix
        [top-up] topped up
        [clear] cleared
        [mulch] mulched
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
caution-weight = soaked, this weighs up to { $weight } before plants and people. I can't tell you that the roof holds it: before you build, ask a structural engineer who has seen it.
caution-load = I can't tell you that a roof or balcony holds. Ask a structural engineer who has seen the slab, and keep heavy things from the edge until then.
caution-spray = the label decides dose and waiting time; not in sun or wind, and with gloves and mask.

## Front

demo-greeting = This is a made-up garden in Nagpur with invented clients and weather. Three things to try:
demo-note = (demo: an invented garden and invented weather, in a store that is thrown away)

## Sow

season-day = { $date } { $month }
season-day-year = { $date } { $month } { $year }
sow-fits =
    { $fits ->
        [yes] { $when ->
            [day] { $crop }: yes, { $day } is in time. { $way ->
                [seedbed] Seed into a seedbed until about { $until }; saplings go out 25 to 35 days later.
                [pieces] Plant { $pieces } in place until about { $until }.
                [planted] Plant out until about { $until }.
                [tray] On a tray until about { $until }.
               *[bed] Sow until about { $until }.
            }
           *[today] { $crop }: yes, now. { $way ->
                [seedbed] Seed into a seedbed until about { $until }; saplings go out 25 to 35 days later.
                [pieces] Plant { $pieces } in place until about { $until }.
                [planted] Plant out until about { $until }.
                [tray] On a tray until about { $until }.
               *[bed] Sow until about { $until }.
            }
        }
        [year] { $crop }: yes, now; here it can go { $way ->
            [tray] on a tray
           *[bed] in
        } the whole year.
        [soon] { $crop }: not yet. { $way ->
            [seedbed] Seed into a seedbed from about { $from } (until { $until }); saplings go out 25 to 35 days later.
            [pieces] Plant { $pieces } in place from about { $from } (until { $until }).
            [planted] Plant out from about { $from } (until { $until }).
            [tray] On a tray from about { $from } (until { $until }).
           *[bed] Sow from about { $from } (until { $until }).
        }
        [late] { $crop }: its time is just over. { $way ->
            [seedbed] Next into a seedbed from about { $from }, until { $until }; saplings go out 25 to 35 days later.
            [pieces] Plant { $pieces } in place next from about { $from }, until { $until }.
            [planted] Plant out next from about { $from }, until { $until }.
            [tray] Next on a tray from about { $from }, until { $until }.
           *[bed] Sow next from about { $from }, until { $until }.
        }
       *[no] { $when ->
            [day] { $crop }: { $day } is not its time.
           *[today] { $crop }: not now.
        } { $way ->
            [seedbed] Seed into a seedbed from about { $from }, until { $until }; saplings go out 25 to 35 days later.
            [pieces] Plant { $pieces } in place from about { $from }, until { $until }.
            [planted] Plant out from about { $from }, until { $until }.
            [tray] On a tray from about { $from }, until { $until }.
           *[bed] Sow from about { $from }, until { $until }.
        }
    }
planted-pieces =
    { $piece ->
        [clove] cloves
        [tuber] tubers
        [rhizome] pieces
        [slip] slips
        [cutting] cuttings
        [runner] rooted runners
       *[bulb] bulbs
    }
sow-main = Its longer season: about { $from } to { $until }.
sow-marginal = Only just: even then { $crop } is at its limit here. Morning sun, a net over noon, and pick it young.
sow-never = { $crop }: no time of the year here lets it come to a harvest in the open.
sow-hot =
    { $when ->
        [before] Put in sooner, it meets weeks above { $limit } by day before its picking is worth it; then it { $beyond ->
            [bolts] runs to flower
            [turns-bitter] turns bitter
            [drops-flowers] drops its flowers
            [scorches] scorches
           *[stops] stops growing
        }.
        [later] It would run into weeks of { $tmax } by day from about { $on } before its picking is worth it; above { $limit } it { $beyond ->
            [bolts] runs to flower
            [turns-bitter] turns bitter
            [drops-flowers] drops its flowers
            [scorches] scorches
           *[stops] stops growing
        }.
       *[now] Too hot: { $tmax } by day, and above { $limit } it { $beyond ->
            [bolts] runs to flower
            [turns-bitter] turns bitter
            [drops-flowers] drops its flowers
            [scorches] scorches
           *[stops] stops growing
        }.
    }
sow-cold =
    { $when ->
        [before] Put in sooner, it meets nights below { $limit }, and then it suffers.
        [later] It would run into nights of { $tmin } from about { $on }; below { $limit } it suffers.
       *[now] Too cold: nights of { $tmin }, and below { $limit } it suffers.
    }
sow-long-day =
    { $when ->
        [before] Put in sooner, it meets days longer than { $limit } h, and then it runs to flower.
       *[now] From about { $on } the days are longer than { $limit } h, and then it runs to flower.
    }
sow-seed-hot =
    { $when ->
        [before] Sooner it is too hot for { $what ->
            [pieces] what is planted: above { $limit } over day and night it lies still or rots
           *[seed] the seed: above { $limit } over day and night it does not come up
        }.
       *[now] { $what ->
            [pieces] Too hot for what is planted: { $mean } over day and night, and above { $limit } it lies still or rots.
           *[seed] Too hot for the seed: { $mean } over day and night, and above { $limit } it does not come up.
        }
    }
sow-seed-cold =
    { $when ->
        [before] Sooner it is too cold for { $what ->
            [pieces] what is planted: below { $limit } over day and night it does not shoot
           *[seed] the seed: below { $limit } over day and night it does not come up
        }.
       *[now] { $what ->
            [pieces] Too cold for what is planted: { $mean } over day and night, and below { $limit } it does not shoot.
           *[seed] Too cold for the seed: { $mean } over day and night, and below { $limit } it does not come up.
        }
    }
sow-slow = It is too cold to come to a harvest in good time.
sow-shows =
    { $what ->
        [pieces] New shoots show in { $days } days if the mix stays damp.
       *[seed] The seed shows in { $days } days if it stays moist.
    }
sow-shows-on =
    { $when ->
        [past] { $crop } sown { $sown } should have shown { $day }: scratch for the seed; if it is soft or gone, sow again.
       *[ahead] { $crop } sown { $sown } should show { $day }; keep the top moist.
    }
sow-pick =
    { $end ->
        [none] First pick about { $day }.
        [tray] Ready to cut about { $day }.
        [cold] First pick about { $day }; from about { $on } the nights are too cold for it, so clear it by then.
        [drops-flowers] First pick about { $day }; from about { $on } the heat makes it drop its flowers.
        [stops] First pick about { $day }; from about { $on } the heat stops it.
        [scorches] First pick about { $day }; from about { $on } the heat scorches it, so pick it before.
        [turns-bitter] First pick about { $day }; from about { $on } it turns bitter, so cut it whole before.
       *[bolts] First pick about { $day }; from about { $on } it runs to flower: cut it whole as soon as a stalk shows.
    }
sow-reckoned-for = Reckoned for { $place }; tell me if you are elsewhere.
sow-backwards = To plant out on { $day }, sow in a seedbed between { $from } and { $until }.
sow-succession = A tray takes about { $days } days now: with { $trays } trays, sow one every { $every } days and you cut one every { $every } days.
sow-shallow = But the { $bed } is only { $depth } deep; { $crop } wants { $needs }.
sow-dark = But the { $bed } gets about { $hours } h of direct sun; { $crop } wants { $needs } h.
sow-saplings = Room for { $plants } in the { $bed }: raise { $raised } saplings, since some fail.
sow-ask-crop = Which crop do you want to sow?
sow-unknown-crop = I have nothing checked on when to sow “{ $crop }”, and I won't guess. I have passed it to the crew: someone will get back to you here.
sow-no-usual-days = I don't have the usual weather of your place, so I can't say what fits when. I have passed it to the crew.
sow-now =
    { $place ->
        [follows] { $when ->
            [day] After the { $crop } in the { $bed }, for { $day }: { $crops }.
           *[today] After the { $crop } in the { $bed }, now: { $crops }.
        }
        [bed] { $when ->
            [day] For the { $bed } on { $day }: { $crops }.
           *[today] For the { $bed } now: { $crops }.
        }
       *[roof] { $when ->
            [day] Fit to go in about { $day }: { $crops }.
           *[today] Fit to go in now: { $crops }.
        }
    }
sow-now-trays = On sprouting trays, in the shade: { $crops }.
sow-nothing =
    { $place ->
        [roof] Nothing I know of fits then: it would meet heat or cold before its harvest.
       *[bed] Nothing I know of fits the { $bed } then: it would meet heat or cold before its harvest.
    }
sow-item =
    { $ends ->
        [year] { $crop } (the whole year)
       *[day] { $way ->
            [seedbed] { $crop } in a seedbed (until about { $until })
            [pieces] { $crop } from { $pieces } (until about { $until })
           *[bed] { $crop } (until about { $until })
        }
    }
sow-waits = Waiting: { $crops }.
sow-waiting = { $crop } from about { $from }
sow-other-family = All of another family than what stood there, so that its pests and rots find nothing.
working-sow-limits = { $crop }: a week is too hot with a mean above { $hot } by day ({ $hot_source }), too cold with nights below { $cold } ({ $cold_source }).
working-sow-young = Young plants are let stand { $more } °C more, before they flower or bolt (a judgement).
working-sow-seed = Its seed comes up between { $base } and { $ceiling }, mean of day and night over a week ({ $source }).
working-sow-day-length = It runs to flower where the day is longer than { $hours } h ({ $source }; day length by fao56: eq. 34).
working-sow-growth =
    { $way ->
        [tray] To the cut it needs { $sum } degree days ({ $source }), within 30 days.
        [seedbed] To the first pick it needs { $sum } degree days from planting out ({ $source }), after 25 to 35 days in a seedbed (common practice, no source); then it must stand for its picking, two weeks at least.
       *[bed] To the first pick it needs { $sum } degree days ({ $source }); then it must stand for its picking, two weeks at least.
    }
working-sow-window = So it can go in from { $from } until { $until }. The ends claim nine times in ten, as a judgement: limits and weeks 1.5 °C easier or stricter.
working-sow-walls = Direct sun that the walls leave, { $bed }, hours a day from January to December: { $hours } (position of the sun after Meeus; walls taken as endless).
working-sow-list = Each crop was run through the year as for “can I sow it now”; those with the most room to their limits come first.
working-season-days =
    { $forecast ->
        [yes] Weeks: the forecast as far as it goes, then usual days of { $place } ({ $period }, { $distance } km away).
       *[no] Weeks: usual days of { $place } ({ $period }, { $distance } km away).
    }
caution-work-heat = at { $tmax } work on the roof at first light or near sunset, drink, and stop at once if you feel giddy.

# (end of: Sow)

## Shade

shade-net =
    { $when ->
        [keep] { $crop }: keep the net of { $hangs } up { $ends ->
            [year] the whole year round
           *[day] until about { $until }
        }; { $percent } suits it.
        [now] { $optional ->
            [yes] { $crop }: a light net helps now, up to { $percent }, until about { $until }; it also stands without.
           *[no] { $crop }: yes, a { $percent } net now, { $ends ->
                [year] and the whole year round.
               *[day] until about { $until }.
            }
        }
       *[later] { $crop }: no net yet. A { $percent } net from about { $from }{ $ends ->
            [year] {" "}on, for the rest of the year.
           *[day] {" "}until about { $until }.
        }
    }{ $reason ->
        [no] {""}
       *[yes] { $when ->
            [later] {" "}It wants one in weeks above { $above }.
           *[now] {" "}Days are at { $tmax }, and above { $above } it wants one.
        }
    }
shade-none = { $crop }: no net needed. No week of the year here is above { $above } by day.
shade-offered =
    { $verdict ->
        [dark] { $percent }: too dark{ $known ->
            [yes] {""} (light left { $left }, least wanted { $least } mol a day).
           *[no] .
        }
        [thin] { $percent }: cuts too little for this heat.
       *[suits] { $percent }: suits{ $known ->
            [yes] {""} (light left { $left }, least wanted { $least } mol a day).
           *[no] .
        }
    }
shade-dark-bed = With { $hours } h of sun the bed is about as dark as { $crop } bears: no dense net there.
shade-past-limit =
    A net shades the leaf but does not cool the air: at { $tmax } it still { $beyond ->
        [bolts] runs to flower
        [turns-bitter] turns bitter
        [drops-flowers] drops its flowers
        [scorches] scorches
       *[stops] stops growing
    }.
shade-water = Under it the bed loses about { $less } % less water; go by the finger.
shade-how = White net rather than green, a forearm above the leaves, open at the sides so that air moves.
shade-more-beds = And { $count } more; ask for one by name.
shade-ask-crop = A net for which crop?
shade-tray = Sprouting trays: cover them dark until the shoots stand, then bright shade or 3 to 4 h of early sun. In noon sun hang a 50 % net, or move them into the shade.
choice-crop = { $crop }
working-shade-weeks =
    { $from ->
        [crop] { $crop }: a net is due in weeks with a mean above { $above } by day ({ $source }); the week that decides has { $tmax }.
       *[limit] { $crop }: no figure of its own; a net is taken as due from 2 °C below its heat limit ({ $source }), at { $above }; the week that decides has { $tmax }.
    }
working-shade-window = Net from { $from } until { $until }; the ends are drawn with the weeks 1.5 °C easier or stricter, as a judgement.
working-shade-cut = It is to cut { $cut } percent of the light ({ $source }).
working-shade-light = Light at the bed with { $hours } h of sun: { $light } mol a square metre and day (radiation × 0.45 × 4.57 mol/MJ, mccree-1972; what reaches the bed by fao56: eq. 28 and Erbs, Klein and Duffie 1982).
working-shade-least = It wants at least { $least } ({ $source }), so the net may cut { $densest } at most.
working-shade-water = The bed's loss under the net is { $share } of that without (the net cuts light and wind, not the heat of the air).
working-shade-wind = Wind presses with q = ½ρv² on a closed net; an open weave takes less.
working-shade-tray = Trays: common practice, no source.
shade-storm = For a storm take the nets down first, and put them up again when it is over; lay down what can fly.
caution-net-wind = take the net down before a storm (a gust of { $gust } km/h: up to { $kilograms } kg a square metre), and don't lean over an edge to tie it.

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
spray-washed-off = The rain of { $day } washes the last one off ({ $rain } mm or more in a day does), so it is due sooner, unless the label asks for a longer gap.
spray-moved = Moved to that day because of { $by }.
spray-obstacle =
    { $what ->
        [rain] rain
        [wind] wind
        [picking] what is ready before: pick that first
       *[heat] heat
    }
spray-usual-day = No forecast reaches that day, so rain and wind are not counted: look at the sky.
spray-look = Pick what is ready first, and spray only where you find insects under the leaves.
spray-tray = Nothing is sprayed on a sprouting tray: it is cut within days and eaten whole. Give it air and less water; throw out a mouldy patch.
spray-strength = Plain { $material }: start at { $start } ml per litre of water; { $dose } ml are used, never more than { $limit } ml.
spray-add-soap = A few drops of mild soap let the oil mix; shake often.
spray-into = For { $volume } L of water that is { $amount }.
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
spray-from-record =
    { $which ->
        [one] I took the last spray noted for this bed; say if it was another.
       *[several] Of all sprays noted for these beds this one makes you wait longest; say if there was another.
    }
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
        [moved] { $bed }: feed on { $day }, then every { $every } days.
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

load-bed =
    { $count ->
        [1] The { $bed }, wet: { $mass } with plants, about { $usual } after an ordinary watering. That lays { $load } on the slab under it.
       *[other] { $count } × { $bed }, wet: { $mass } together, about { $usual } after an ordinary watering. Each lays { $load } on the slab under it.
    }
load-volume = { $volume } of our light mix: about { $wet } moist, up to { $full } with every pore full of water. Garden soil would weigh { $soil } kg a litre, wet.
load-depth = { $depth } of our light mix, wet: { $mass } on each square metre ({ $foot } on each square foot), that is { $load }, before sides, plants and people.
load-limit =
    The engineer's figure stored for this roof is { $limit }. { $larger ->
        [usual] Already after an ordinary watering this is more than that: keep it off or make it lighter, and ask the engineer again with this number.
        [load] At its heaviest (drain blocked, water standing) this is more than that: keep it off or make it lighter, and ask the engineer again with this number.
       *[limit] Even at its heaviest (drain blocked, water standing) this is less than that, but the figure also has to carry people and all else: the engineer says what is left.
    }
load-ask = Ask the engineer: how many kN/m² it takes beside people and tank, where beams and bearing walls run, the slab's state.
load-engineer = The engineer's figure stored for this roof is { $limit }. Only the engineer can say what it has to carry beside boxes: people, tank, rain.
load-no-engineer = No engineer's figure is stored for this roof, so yes: ask one before anything heavy goes up.
load-site =
    { $count ->
        [1] With two people and a delivery of sacks: { $mass } on { $site }.
       *[other] All { $count } beds of { $site } with two people, up to a blocked drain and a delivery of sacks: { $mass }.
    }
load-heaviest = { $parts }. The heaviest on its ground, the { $bed }, lays { $load } on the slab under it.
load-one = { $bed } { $mass }
load-lower = Lighter: less depth, more room between boxes, no garden soil (wet it weighs { $soil } kg a litre).
load-doubt =
    { $what ->
        [damage] Put nothing more up there, and take off what is heavy if you can do it without risk: an old roof, cracks or damp are for a structural engineer to look at first.
        [hanging] Don't hang it there yet: a railing or ceiling hook is not made for wet mix, and what falls can kill. Someone who builds such fixings has to look at it first.
        [water] Water weighs a kilogram a litre, so 500 litres are half a tonne before the drum, all on one small spot. No one should fill it up there before a structural engineer who has seen the slab has said where it may stand.
       *[place] Not near an unsupported edge. Over which beam or wall heavy boxes may stand, only an engineer who knows the slab can say.
    } I have passed this to the crew.
load-assumed = I don't have your bed: this is for a { $bed }. Tell me yours.
ask-load-size = How big is it? Length, width and depth of the box, or the litres of the bag.
choice-all-beds = all my beds
caution-hanging = keep people from below it, and don't lean over the edge to fix or water it.
working-load-mix = { $mix }: { $wet } kg a litre when drained after a watering, { $full } kg a litre with every pore full.
working-load-parts = Mix drained { $mix }, full of water { $full }; water standing on it and in its tray { $ponded }; sides, trays or pot { $vessel }; plants { $plants }.
working-load-ground = It stands on { $ground }: { $load }, from drained to blocked, at 9.81 m/s².
working-load-depth = On one square metre: { $load }, from drained to every pore full, at 9.81 m/s².
working-load-site = Beds { $beds }; two people { $people }; sacks for the largest bed on the day they come, wet { $sacks }.
working-load-judged = Weights of sides, trays, plants and people are a judgement, no source; the range claims nine times in ten.
working-load-code = A building code's figure for a roof or balcony is for people and furniture: boxes come on top of it, so it is not compared here.

# (end of: Load)

## Space and seed

ask-space-crop = Which crop? Spacing differs from 5 cm to half a metre.
ask-seed-crop = Seed of which crop, and for how big a bed or tray?
space-plants =
    { $verdict ->
        [too-many] { $asked } is too many: { $one ->
            [one] { $bed } has room for 1 { $crop } plant.
            [first] { $bed } has room for 1 { $crop } plant, at the very most { $plants }.
           *[more] { $bed } has room for { $usual } { $crop } plants, { $plants } by the gap you keep.
        }
        [tight] { $asked } is tight: { $bed } has room for { $one ->
            [first] 1 { $crop } plant ({ $plants } by the gap you keep).
           *[more] { $usual } { $crop } plants ({ $plants } by the gap you keep).
        }
       *[none] { $bed }: { $one ->
            [one] 1 { $crop } plant
            [first] 1 { $crop } plant ({ $plants } by the gap you keep)
           *[more] about { $usual } { $crop } plants ({ $plants } by the gap you keep)
        }{ $share ->
            [shared] , with an equal share of it
           *[whole] {""}
        }.
    }
space-density = That is about { $metre } on a square metre{ $few ->
    [few] {""}
   *[many] , { $foot } on a square foot
}.
space-bed = the { $bed }
space-gap = { $crop }: { $cm } cm ({ $inches } in) from plant to plant{ $edge ->
    [rim] {""}
   *[edge] , and { $half } cm from the edge
}.
space-between = Between { $one } and { $other }: about { $cm } cm.
space-litres = Each wants { $litres } of mix to itself: in the heat a smaller one dries out between waterings.
space-empty = Counted for the empty bed: what stands there now takes its room.
space-strewn = No gap on a sprouting tray: the seed is strewn evenly, close but not on top of each other.
space-ground = { $area } of bed
working-space-rows = In squares { $along } along by { $across } across = { $square }; with every second row moved by half a gap { $staggered } at { $cm } cm.
working-space-round = Round: the most of rings within rings and of a triangular grid.
working-space-litres = In a pot or bag the roots decide: { $litres } a plant (common practice, no source; held beside printed container volumes).
working-space-ground = Area over the square of the gap; the edges cost some where the bed is narrow.
working-space-edge = A plant may stand half a gap from the edge. From the widest gap to the closest: the range of the plants.
seed-grams =
    { $way ->
        [tray] About { $about } of { $crop } seed for { $place } ({ $grams }), strewn thick for shoots.
        [pieces] About { $count } { $pieces } of { $crop } for { $place } ({ $seeds }), one every { $gap } cm: { $about } to buy ({ $grams }).
        [weight] About { $about } of { $crop } seed for { $place } ({ $grams }).
        [few] About { $count } { $crop } seeds for { $place } ({ $seeds }): less than 1 g.
       *[bed] About { $about } of { $crop } seed for { $place } ({ $grams }), some { $count } seeds.
    }
seed-how = That is seed laid for each place and thinned to one plant; a little over for gaps does no harm.
seed-strewn-how = Mix it with a little dry sand, strew it thin, and thin in steps: the thinnings are eaten.
seed-pieces-how = A few more than places, since not every piece takes. Whole, firm, healthy pieces; { $depth } cm deep.
seed-tray-how = One even layer, no heaps.
seed-as-plants =
    { $by ->
        [weight] Grown to plants it takes { $grams }.
       *[seeds] Grown to plants, one to a place: { $seeds } seeds.
    }
seed-packet =
    { $enough ->
        [enough] { $packet } is enough.
        [plants] { $packet } is enough for plants, and not for shoots.
        [short] { $packet } is not enough.
       *[about] { $packet } is just about enough.
    }
seed-unknown = I have no checked seed weight for { $crops }; someone of the crew will tell you.
seed-plants = { $count } plants
seed-range = { $low } to { $high } g
seed-row = a row of { $length }
seed-beds = { $count } × { $bed }
working-seed-plants = { $plants } plants at { $cm } cm, { $laid } seeds for each, { $comes } % come up.
working-seed-weight = 1000 seeds weigh { $grams } g.
working-seed-tray = { $grams } g on each square metre × { $area }.
mix-all-beds =
    { $count ->
        [1] one bed
       *[other] { $count } beds together
    }
mix-blocks = { $material } comes as pressed blocks: { $mass } of them swell to that ({ $blocks } of 5 kg).
mix-top-up = { $litres } of loose mix to bring the { $bed } up again by { $sunk }.
build-round =
    For the { $bed }: { $cloth ->
        [none] no trays, sides or lining; holes below for the water to run out
       *[other] { $cloth } of cloth, cut square; no trays or sides
    }.
build-site = For the { $bed }: { $trays } drainage trays of { $tray }, { $sides } of side, { $cloth } of lining cloth, { $wire } of wire.
working-build-site = Added up bed by bed before rounding; baskets and round pots take cloth and no trays, bags and sprouting trays neither.

# (end of: Space and seed)

## Water: away, salts, what was seen

assumed-usual-rain = I counted on rain as in a usual year, on some { $days } of the 7 days. After two dry days water as in a dry week.
water-now =
    { $when ->
        [now] Water the { $bed } now, about { $pour }: it won't last until the next turn.
        [evening] Not yet: the { $bed } can wait until this evening. Water it then, about { $pour }.
        [tomorrow] Not today: the { $bed } can wait until tomorrow morning.
       *[later] Not yet: the { $bed } can wait until the morning of { $day }.
    }
water-now-since =
    { $how ->
        [told] Reckoned from the watering you told of, { $day }: it has lost { $lost } since.
        [rain] Reckoned from the rain you told of, { $day }: it filled the bed, which has lost { $lost } since.
       *[recorded] Last watered { $day }, by the record; it has lost { $lost } since.
    }
water-now-rain = Leave the { $bed } for now: { $rain } of rain is expected today. If it has not come by evening, water then.
water-now-unknown = When the { $bed } was last watered is not on record: push a finger in, and water if it is dry a joint down.
water-day-by-day = Day by day: { $days }.
water-of-day = { $day } { $litres }
water-drip = Drip, each time: { $minutes } minutes.
water-drip-unknown = Say how many litres an hour your drip gives this bed, and I give the minutes.
water-seed = Seed lies on top: sprinkle with a fine rose or mist so that nothing is washed away, and never let the top dry.
water-saplings = Pour it round each young plant, not over the whole top, for the first week.
water-days =
    { $how ->
        [part] less than a day
        [up-to] { $n } days at most
        [open] { $n } days or more (not before { $day })
       *[days] { $n } days
    }
water-away =
    Away { $from } to { $until }, { $days } days: { $which ->
        [first] the { $bed } runs short first, { $dry } after a full watering.
       *[only] the { $bed } runs short { $dry } after a full watering.
    }
water-without =
    { $which ->
        [first] Watered full and then left, the { $bed } runs short first, after { $dry }.
       *[only] Watered full and then left, the { $bed } runs short after { $dry }.
    }
water-away-others = Then: { $beds }.
water-away-other = { $bed } { $dry }
water-away-enough = A full watering on the morning you leave lasts that long, if the weather keeps to what is expected.
water-away-shelter = Mulched and under a { $net } net the { $bed } may last { $dry }; count on the lower figure.
water-away-saucers = Pots and baskets: together in shade, in a tray with two fingers of water, for a day or two more.
water-away-person = Sure is only a person with a can: { $turns }.
water-away-turn =
    { $bed } { $rhythm ->
        [weekly] { $turn } once a week
        [third] { $turn } every third day
        [second] { $turn } every second day
        [daily] { $turn } a day
        [twice] { $turn } morning and evening
       *[thrice] { $turn } three times a day
    }
water-not-summed = Not counted in this, because their size, mix or weather is not known: { $beds }.
water-away-unknown = I can't say how long these beds last: their size or their weather is not known.
caution-away = a tap or drip left open unwatched can flood and load the roof; try it for two days while you are there. Who waters for you keeps away from the edge.
water-flush =
    { $when ->
        [now] Flush the { $bed } now, with about { $usual } ({ $litres }) in three slow rounds.
        [later] Flush the { $bed } about { $day } or later, with about { $usual } ({ $litres }) in three slow rounds.
       *[ahead] Flush the { $bed } { $day }, with about { $usual } ({ $litres }) in three slow rounds.
    }
water-flush-reason = Water of { $ec } dS/m leaves its salt in a bed that never drains, and { $crop } suffers above { $limit } dS/m. Heavy rain puts it off.
water-flush-since-unknown = When it was last flushed is not on record; I counted from today.
water-flush-not-soon = The { $bed } needs no flush within the next half-year.
water-flush-too-salt = This water ({ $ec } dS/m) is itself near what { $crop } stands ({ $limit } dS/m): flushing helps little. Mix it with rain or sweeter water.
water-flush-crop-unknown = How much salt the crop of the { $bed } stands is not known to me.
water-flush-unknown = I don't know how much salt this crop stands, so I can't give a day. I have passed it to the crew.
ask-water-salt = How salty is your water, in dS/m? A meter or a water test says it; the crew can note it for your roof.
caution-flush = a flush is a heavy load and a wet floor: outlet clear, in rounds, not all beds on one day.
working-learned =
    { $how ->
        [faster] From { $looks } looks: this bed dries { $percent } faster than the sum (factor { $factor }, nine times in ten).
        [slower] From { $looks } looks: this bed dries { $percent } slower than the sum (factor { $factor }, nine times in ten).
       *[same] From { $looks } looks: this bed dries as the sum says (factor { $factor }, nine times in ten).
    }
working-salt = Salt: with water of { $ec } dS/m, { $part } of it would have to run through for { $crop } (fao29: eq. 9, after Rhoades 1974); { $crop } stands { $limit } dS/m ({ $source }). Salt is added up from what is poured; feeds are not counted.

# (end of: Water: away, salts, what was seen)

## Bot

bot-hello-stranger = I answer questions about kitchen gardens on roofs: water, sowing, mixes, pests. Without an invitation from the crew I answer in general only. Write what you want to know.
bot-hello = You are linked as { $name } ({ $role }). Write what you want to know, or what you did.
bot-role =
    { $role ->
        [owner] owner
        [gardener] gardener
       *[client] client
    }
bot-help = Write as you would to a person: "how much water for the east box", "watered the east box", "why". What I don't know I pass to the crew. "Forget me" removes what I keep about you.
bot-code-wrong = This code is not valid: it has been used, or is older than seven days. Ask the crew for a new one.
bot-code-not-needed = You are linked as { $name } already. The code was not used.
bot-invite-made = Code for { $name } ({ $role }), good once and for seven days: { $code }
bot-invite-link = They open { $link } or send me: /start { $code }
bot-invite-known = { $name } is known already; the code links them, with the roofs they have.
bot-invite-usage = Write: /invite gardener NAME roof roof, or /invite client NAME roof, or /invite and the id of someone in the store.
bot-site-unknown = There is no roof "{ $site }". There are: { $sites }
bot-came-in = { $name } ({ $role }) has come in.
bot-owner-only = Only the owner may do that.
bot-crew-only = Only the crew may do that.
bot-not-linked = I don't know you yet. Ask the crew for an invitation.
bot-command-unknown = I don't know this command. /help says what there is.
bot-too-many = That is as much as I answer within an hour. Write again later, or ask the crew for an invitation.
bot-button-old = This button is no longer good. Please write what you want.
bot-button-why = why
bot-button-yes = yes
bot-button-no = no
bot-left-alone = Nothing was changed.
bot-place-which = Which roof lies here ({ $latitude }, { $longitude })?
bot-place-set = { $site } now lies at { $latitude }, { $longitude }. Height above the sea and time zone stay as they were.
bot-place-not-yours = Only the owner and the gardeners of a roof may say where it lies.
bot-media-passed = I can't look at pictures or listen. I passed it to the crew.
bot-media-stranger = I can't look at pictures or listen. Please write what you see.
bot-question = { $name } asks: { $text }
bot-question-media = { $name } sends this. { $text }
bot-question-how = Reply to this message and I pass your words on.
bot-a-stranger = A stranger
bot-from-crew = The crew answers: { $text }
bot-passed-on = Passed on to { $name }.
bot-answered-by = { $who } has answered { $name }: { $text }
bot-no-chat = { $name } has no chat with me: please tell them yourself. The question is off the list.
bot-question-gone = This question has been answered already, or its asker is gone.
bot-question-not-yours = This question is for the owner or for the gardeners of that roof.
bot-questions-none = Nothing waits.
bot-question-line = { $day }, { $name }: { $text }
bot-trouble = I could not work on this message. Please write it another way, or ask the crew.
bot-person-unknown = There is no person "{ $person }". There are: { $people }
bot-person-removed = { $name } is removed, with all that was kept about them.
bot-person-line = { $id }: { $name } ({ $role }), { $linked ->
        [yes] linked
       *[no] not linked
    }
bot-language-set = I will answer you in English.
bot-language-usage = Write /language en, /language hi or /language hi-Latn.
bot-keep-title = This is what I keep about you.
bot-keep-person = Name: { $name }. You are: { $role }. Id: { $id }.
bot-keep-sites = Roofs: { $sites }.
bot-keep-language = Language: { $language }.
bot-keep-chat = The number of this chat, linked since { $day }, so that I know you.
bot-keep-conversation = What your last message meant, to understand the next one.
bot-keep-questions = Questions of yours that wait for the crew: { $count }.
bot-keep-answers = Marks of my last answers, so that you can reply to them: { $count }. They go after 7 days; questions to the crew after 30.
bot-keep-records = Work and looks on these roofs: { $count }. They belong to the roof and do not name you.
bot-keep-how = /export sends it as a file. /forget removes it.
bot-forget-ask = Shall I forget you? Your name, this chat, your conversation and your waiting questions go. What was done on the roof stays with the roof, without your name. Backups still hold it for up to seven days.
bot-forgotten = Done. I no longer know you. Backups still hold it for up to seven days.
bot-menu-help = what I can do
bot-menu-me = what I keep about you
bot-menu-export = my data as a file
bot-menu-forget = forget me
bot-menu-language = choose the language
bot-menu-questions = what waits for the crew
bot-menu-invite = invite a person
bot-menu-people = who is known
bot-menu-remove = remove a person
# What people write without a command, in any language, parted by a bar.
bot-words-me = show what you keep about me | what do you keep about me | what do you know about me | my data | show my data | what have you stored about me
bot-words-export = export my data | send me my data | download my data | a copy of my data
bot-words-forget = forget me | forget everything about me | delete my data | delete me | remove my data | erase my data | delete everything about me
bot-words-help = help | what can you do | what all can you do | how does this work | how do i use this | what can i ask | what should i ask

# (end of: Bot)

## Trouble

trouble-what-seen = What do you see on it?
trouble-which-sign = It may be { $first } or { $second }. Which of these do you see as well?
trouble-likely = Most likely: { $trouble }.
trouble-either = Most likely { $first }; it could also be { $second }.
trouble-tell-apart = To be surer: which of these do you see as well?
trouble-steps = { $text }
trouble-remedy = { $material }: { $text }
trouble-watch = Watch for: { $text }
trouble-pull = When to pull it: { $text }
trouble-call = When to call us: { $text }
choice-sign = { $sign }
choice-none-of-these = none of these
working-signs-seen = Seen: { $signs }.
working-signs-not-seen = Asked for and not seen: { $signs }.
working-cause = { $trouble }, { $percent } in a hundred: { $signs }
working-causes = Weighed by how often each sign is seen with each trouble, by crop, weather and the work done; these weights are our judgement, not counted cases.

## What is due

due-job =
    { $day ->
        [today] Today
       *[other] { $day }
    }: { $job ->
        [spray] spray
        [feed] feed
        [pick] pick
        [sow] sow again
        [net] net up
        [net-down] net down
       *[other] { $job }
    }{ $crop ->
        [none] {""}
       *[other] {" "}{ $crop }
    }, { $beds }.
due-none = Nothing is due in these seven days but watering.
due-none-day = Nothing is due on { $day } but watering.
due-beds-more = { $count } more beds
due-more = and { $count } more.
working-due-moved = { $bed }: moved to { $day } by { $by ->
    [rain] rain
    [picking] a picking
    [wind] wind
   *[heat] heat
}.
working-due-since = { $bed }: { $job ->
    [spray] spray
    [feed] feed
    [pick] picking
    [net] net
    [net-down] net
   *[other] { $job }
} was due on { $day } by its rhythm.
working-due = Spray weekly, feed every 7 to 10 days or as the crop wants, first pick by the warmth gathered, net by the heat of the weeks; watering has its own rhythm.

shoots-refused = Not { $crop }: don't grow it as shoots and don't eat them.
shoots-instead = Good shoots instead: mustard, radish, fenugreek, coriander.

recorded-bed = Noted a new bed: { $name }, { $size }.
recorded-bed-depth = You did not say how deep: I took { $size }.
recorded-bed-rest = It counts as house mix, { $sun } hours of sun, open to rain and without a net until you tell me otherwise.
record-corrected = What I had noted before is taken back.
ask-which-site = At which site?
choice-site = { $site }

## Someone is hurt

emergency-first =
    { $what ->
        [swallowed] Go to a doctor or hospital now, and take the bottle, seed or leaf along. Do not make them vomit; rinse the mouth with water.
        [breathed] Out of the spray into fresh air now, and sit the person up; take off what is soaked and wash the skin with soap and running water. Go to a doctor or hospital now with the bottle or its label; if breathing is hard, call an ambulance at once.
        [skin] Take off what is soaked, brush dry powder off, and rinse the skin with plenty of running water for 20 minutes, with soap if it was oil or a spray. Then a doctor with the bottle or its label, at once if it burns or the person feels ill.
        [eye] Rinse the eye at once under clean running water, 15 minutes, lids held open; then see a doctor.
        [bite] Go to a hospital now. Keep still, do not cut, suck or tie the bite; wash a dog's or monkey's bite with soap and running water for 15 minutes first.
        [heat] Into the shade now: lie down, wet the skin, fan, small sips of water if awake. Confused or fainted: an ambulance at once.
        [shock] Switch the current off at the main before anyone touches the person or the pump; then call an ambulance. Everyone who had a shock is to see a doctor.
        [cut] Press a clean cloth on it until the bleeding stops, then wash it with soap and running water. See a doctor today about tetanus and about anything still inside; if the bleeding does not stop, go at once.
        [burn] Cool it under running water for 20 minutes, and take off rings and what is soaked. Brush dry lime off first. No paste, no ice; then a doctor, at once for face, hands, a large burn or lime.
        [blow] Keep the hurt part still, take rings off, and hold something cold in a cloth on it. See a doctor today. If it is crooked or numb, cannot be stood on, or the head, neck or back was hit: do not move the person, and call an ambulance now.
        [choked] Whoever can cough, let them cough. Who cannot breathe or speak: bend them forward and give five firm blows between the shoulder blades with the heel of the hand (a baby under a year lies face down along your forearm); call an ambulance now. A seed in the nose or an ear: do not poke for it; a doctor takes it out, today.
       *[fall] Call an ambulance now. Do not move or sit up someone who fell from a height; keep the head still and the person warm.
    }
emergency-help = In India the emergency number is 112. I have told the crew as well; do not wait for them.
caution-emergency = This is first help only; a doctor decides.
spray-not-on-bees = No: not while bees are on open flowers. Wait until dusk when they have gone home, and keep the spray off the flowers.
spray-not-at-noon = No: not in the heat of the day or in sun, it burns the leaves. Spray at first light or near sunset, below 32 °C.
record-undone = Taken back: what I had noted is gone.
record-which-day = There is no such day. Which day was it?
new-bed-odd-size = That would be larger than a room. Say length, width and depth once more, with feet, inches or cm.

harvest-supposed =
    { $when ->
        [today] { $crop }, { $how ->
            [planted] planted out
           *[sown] sown
        } today: first pick { $day }, after some { $days } days.
       *[later] { $crop }: it is not the time for it now. { $how ->
            [planted] Planted out
           *[sown] Sown
        } when it fits again, about { $start }: first pick { $day }, after some { $days } days.
    }
## What a crop wants, and what there is
wants-depth =
    { $verdict ->
        [enough] { $crop }: { $offered } is deep enough; it wants about { $needs } of mix.
        [just] { $crop }: { $offered } just does; { $needs } of mix is better.
        [short] { $crop }: { $offered } is too little; it wants { $needs } of mix.
       *[unsaid] { $crop } wants about { $needs } of mix, so a box or pot two fingers deeper than that.
    }
wants-gap = A plant takes about { $gap } across: one to a pot of that width, more in a wider box.
wants-sowing-depth =
    { $as ->
        [pieces] { $crop }: set { $pieces } { $cm } cm deep.
       *[seed] { $crop }: { $cm } cm of fine mix over the seed.
    }
wants-sun =
    { $verdict ->
        [enough] { $crop }: { $offered } h of direct sun is enough; it wants about { $needs }.
        [just] { $crop }: { $offered } h of direct sun just does; { $needs } is better.
        [short] { $crop }: { $offered } h of direct sun is too little; it wants about { $needs }.
       *[unsaid] { $crop } wants about { $needs } h of direct sun a day.
    }
wants-tray = { $crop } shoots: 3 to 5 cm of tray mix and bright shade are enough.
working-depth = Depth of mix: { $needs } ({ $source }).
working-sun = Direct sun: { $needs } h ({ $source }).
bed-stands = { $bed }, { $size }: { $crops }.
bed-empty = { $bed }, { $size }: nothing on record in it.
bed-planting =
    { $crop }, { $how ->
        [planted] planted { $day }
       *[sown] sown { $day }
    }
beds-more = And { $count } more.
# --- What was done last; messages about the conversation itself ---
last-done =
    { $bed }: last { $job ->
        [water] watered
        [spray] sprayed
        [feed] fed
        [pick] picked
       *[other] done
    } on { $day }{ $amount ->
        [none] {""}
       *[other] , { $amount }
    }.
last-none =
    { $bed }: not { $job ->
        [water] watered
        [spray] sprayed
        [feed] fed
        [pick] picked
       *[other] done
    } yet, as far as it was told here.
last-who = Who did it is not kept here.
speaks-set = From here on in English. What would you like to know?
## The weather of this week: who foretold it, how old it is, what is known of the days gone by
weather-old = The newest forecast I have is { $days } days old, of { $day }: look at the sky as well.
assumed-usual-days-part = The forecast lacks { $days } of the 7 days: there I took usual days for the season at { $place }.
working-forecast-by = Forecast data: { $service ->
        [met-norway] MET Norway, Locationforecast 2.0
       *[open-meteo] Open-Meteo
    }, licence CC BY 4.0, made { $day }, up to { $until }.
working-forecast-ended = The last forecast ended on { $until }; usual days stand in for it.
working-days-gone = Of the last { $days } days: { $observed } as they were found to be, { $kept } as their last forecast had them, { $told } as people told, the rest usual days.
## The year ahead
year-head =
    { $of ->
        [site] The year ahead at { $site }, by the sun and depth of its beds.
        [sites] The year ahead on your roofs, by the sun and depth of their beds.
        [beds] The year ahead for the { $beds }, by sun and depth.
       *[place] The year ahead in { $place }, for beds with sun and depth enough.
    }
year-month = { $month }: { $sow }{ $net_up }{ $net_down }{ $halved }{ $full }{ $drains }{ $water }
year-sow =
    { $what ->
        [begins] start { $begins }.{ $more }
        [both] start { $begins }; last month for { $ends }.{ $more }
        [ends] last month for { $ends }.{ $more }
        [goes-on] nothing new; { $count } crops are still in time.
       *[nothing] nothing goes in.
    }
year-goes-on = {" "}{ $count } more are in time.
year-more = { $count } more
year-net-up =
    {" "}{ $when ->
        [now] The net belongs up now.
       *[later] Net up about { $day }.
    }
year-net-down = {" "}Net down about { $day }.
year-feed-halved =
    {" "}{ $when ->
        [now] Half feeds for now (days of { $limit } and more).
       *[later] Half feeds from about { $day } (days of { $limit } and more).
    }
year-feed-full = {" "}Full feeds again from about { $day }.
year-drains = {" "}Clear drains and outlets before its first big rain.
year-water =
    {" "}{ $rhythm ->
        [none] Rain waters it.
        [weekly] Water once a week.
        [third] Water every third day.
        [second] Water every second day.
        [daily] Water once a day.
        [twice] Water morning and evening.
       *[thrice] Water three times a day.
    }
year-always = The whole year: { $crops }.
year-trays = On sprouting trays the whole year, in shade: { $crops }.
year-seedbed = Into a seedbed first, saplings out 25 to 35 days later: { $crops }.
year-pieces = Not from seed: { $crops }.
year-pieces-of = { $crop } from { $pieces }
year-water-of = Waterings are of the { $bed } fully grown over and told where they change; the finger in the mix has the last word.
year-net-rule = Nets are for weeks above { $above } by day; tender greens want one sooner, okra and amaranth later.
year-usual = All by usual weather: a year can be two weeks early or late. Ask for one crop for its exact days.
working-year = Each crop: the weeks from which it gets to its harvest before heat, cold or long days end it. Net: weeks above 35 °C by day (common practice). Feed: halved in weeks of 40 °C and more (a judgement). Drains: the first month of 100 mm of rain (a judgement). Waterings: the bed's sum for the middle of each month.
## Alerts
alert-days =
    { $span ->
        [one] on { $from }
       *[more] from { $from } to { $until }
    }
alert-heat =
    { $grade ->
        [one] Heat wave
       *[two] Severe heat wave
    } { $days }: up to { $tmax }, where { $usual } is usual.
alert-water = From tomorrow: { $beds }.
alert-water-all = From tomorrow the { $count } beds want about { $day } a day in all; ask for one by name.
alert-heat-do = Net up before it; no spraying, no strong feed; water before the sun is on the bed, pots together in the shade.
alert-rain =
    { $grade ->
        [one] Heavy rain
        [two] Very heavy rain
       *[three] Extremely heavy rain
    } { $days }: up to { $mm } mm in a day.
alert-rain-do = Before it: drains and outlets clear, saucers emptied, ripe things picked; no watering, spray or feed that day, and off the roof when it thunders. If water stands on the roof or comes through, tell us.
alert-wind =
    { $grade ->
        [one] Strong wind, whole branches moving,
       *[two] Near gale, whole trees moving,
    } { $days }.
alert-wind-do = While it is still calm: nets rolled up on the ground, tall plants tied low, pots, cans and loose boards down from walls and away from the edge.
alert-cold =
    { $grade ->
        [one] Cold night
       *[two] Very cold night
    } { $days }: down to { $tmin }. That is too cold for { $crops } ({ $beds }).
alert-cold-do = Cover them with cloth or jute at dusk and take it off in the morning sun; small pots against a wall; water in the morning only.
alert-walls = Days of 38 °C and more { $days }: the sun on thin walls heats the roots ({ $beds }). Shade their west side with wet jute or a board, push pots together, lift them off the slab, mulch.
alert-bolting =
    { $crop } ({ $beds }): { $by ->
        [heat] this week's days of { $tmax } are past the { $limit } it bears
       *[day] the days are now longer than { $limit } h
    }, so it runs to flower. Cut it whole or pick it hard now.
alert-rains = The rains usually begin in { $month }: clear drains and outlets now, and see that every bed lets water out below.
alert-none = Nothing out of the ordinary is foretold until { $day }: no heat wave, heavy rain, strong wind or night too cold for what stands.
alert-no-forecast = I have no forecast for your roof now, so I can't warn of single days.
caution-heat-work = at the hottest hour it feels like { $felt } in the shade, up to 8 °C more in the sun: on the roof only before nine and after five, never alone, drink water every 20 minutes. Giddy, confused or no longer sweating: into the shade, wet the skin, call 112.
caution-wind-edge = never to the edge in wind, and never after a thing that the wind has taken.
## The weather as it was told
sky-told =
    { $span ->
        [one] Reckoned with what you say of { $from }: { $what }.
       *[more] Reckoned with what you say of { $from } to { $until }: { $what }.
    }
sky-both = { $tmax } by day and { $tmin } by night
sky-day = { $tmax } by day
sky-night = { $tmin } by night
sky-rain = { $mm } mm of rain
sky-dry = no rain
sky-rain-guessed = You gave no millimetres, so I took { $mm } mm; a straight-sided glass left outside measures it.
working-days-told = On { $days } of the 7 days the weather is as people here told it.
## Pictures and pages
draw-from-until = { $from } to { $until }
draw-a-day =
    { $unit ->
        [ml] Millilitres a day
       *[L] Litres a day
    }
draw-weekday =
    { $day ->
        [mon] Mon
        [tue] Tue
        [wed] Wed
        [thu] Thu
        [fri] Fri
        [sat] Sat
       *[sun] Sun
    }
draw-turn =
    { $turn ->
        [morning] Morning
        [noon] Noon
       *[evening] Evening
    }
draw-whisker = The line on each bar runs from the least to the most it may want.
draw-usual-days = Striped: no forecast reaches so far, a usual day stands in.
draw-gap = { $gap } from stem to stem
draw-room = One plant wants room of { $room } across
draw-rows = { $along } along the length, { $across } along the width
draw-to-scale = Drawn to scale, from above. Dot: the stem. Circle: the room of one plant.
draw-month =
    { $month ->
        [jan] Jan
        [feb] Feb
        [mar] Mar
        [apr] Apr
        [may] May
        [jun] Jun
        [jul] Jul
        [aug] Aug
        [sep] Sep
        [oct] Oct
        [nov] Nov
       *[dec] Dec
    }
draw-today = today
draw-year-waterings = Waterings a week
draw-year-kind =
    { $kind ->
        [goes-in] It can go in
        [picking] It is picked
        [net] Net over it
        [feed-less] Feed half
       *[rains] Rains: keep the drains clear
    }
draw-card-title = Card for the tap
draw-card-valid = Good from { $from } to { $until }
draw-card-none = No water this week
draw-card-finger = After rain too: push a finger in first.
draw-card-edge = Keep away from the edge. Never work alone beside it.
draw-label-scan = Scan it to ask or tell about this bed.
draw-round-title = The round
draw-round-none = Nothing is due but watering.
draw-due-since = due since { $day }
draw-calendar-name = Jobs on the roofs
draw-job =
    { $job ->
        [spray] Spray
        [feed] Feed
        [pick] Pick
        [sow] Sow again
        [net] Net up
        [net-down] Net down
       *[other] { $job }
    }{ $what ->
        [none] {""}
       *[other] {": "}{ $what }
    }
## The crew's work by message
card-title = { $site }, { $bed }{ $crops ->
        [none] {""}
       *[other] {" "}({ $crops })
    }.
card-due = Due: { $jobs }.
card-noted = Noted today: { $what }.
job-due =
    { $job ->
        [water] water
        [spray] spray
        [feed] feed
        [flush] flush
        [sow] sow again
        [plant] plant
        [thin] thin
        [weed] weed
        [prune] prune
        [stake] stake
        [pick] pick
        [pull] pull
        [net] net up
        [net-down] net down
        [mix] new mix
        [top-up] top up
        [clear] clear
        [mulch] mulch
        [mend] mend
       *[check] check
    }{ $what ->
        [none] {""}
       *[other] {" "}{ $what }
    }
job-done =
    { $job ->
        [water] watered
        [spray] sprayed
        [feed] fed
        [flush] flushed
        [sow] sown
        [plant] planted
        [thin] thinned
        [weed] weeded
        [prune] pruned
        [stake] staked
        [pick] picked
        [pull] pulled
        [net] net put up
        [net-down] net taken down
        [mix] new mix
        [top-up] topped up
        [clear] cleared
        [mulch] mulched
        [mend] mended
       *[check] checked
    }{ $what ->
        [none] {""}
       *[other] {" "}{ $what }
    }{ $amount ->
        [none] {""}
       *[other] {", "}{ $amount }
    }
bed-looked =
    { $what ->
        [still-wet] still wet
        [dry-early] dry too early
       *[ran-through] water ran through
    }
card-button-did =
    { $job ->
        [water] watered
        [spray] sprayed
        [feed] fed
        [flush] flushed
        [sow] sown
        [plant] planted
        [thin] thinned
        [weed] weeded
        [prune] pruned
        [stake] staked
        [pick] picked
        [pull] pulled
        [net] net put up
        [net-down] net taken down
        [mix] new mix
        [top-up] topped up
        [clear] cleared
        [mulch] mulched
        [mend] mended
       *[check] checked
    }
card-button-saw =
    { $what ->
        [still-wet] still wet
        [dry-early] dry too early
       *[ran-through] water ran through
    }
card-button-all = all of it done
card-button-picked = picked
card-button-take-back = take back
card-button-back = back
card-button-type = type it
card-button-unweighed = not weighed
card-which-crop = What did you pick?
card-how-much = How much { $crop } did you pick?
card-type-weight = Write the weight, like 350 g or 1.2 kg.
card-odd-weight = That can't be right. Write the weight again, like 350 g or 1.2 kg.
value = { $value }
crew-not-yours = You don't look after that bed.
round-line = Round, bed { $n } of { $all }.
round-title = Round for { $day }: { $sites ->
        [1] one roof
       *[other] { $sites } roofs
    }, { $beds ->
        [1] one bed
       *[other] { $beds } beds
    }, about { $km } km as the crow flies.
round-stop = { $n }. { $site }: { $jobs ->
        [0] watering
        [1] one job and watering
       *[other] { $jobs } jobs and watering
    }.
round-nothing = You have no roof with beds yet.
round-button-begin = begin
round-button-from-here = start where I am
round-button-as-given = in the order of my list
round-button-anew = start anew
round-button-skip = skip
round-button-next = next bed
round-button-others = another bed
round-button-leave = leave this roof
round-button-end = end the round
round-ask-start = Send me where you are: the paper clip, then location. The round starts from there.
round-where-to = Where to?
round-over = The round is over: { $sites ->
        [1] one roof
       *[other] { $sites } roofs
    }, { $beds ->
        [1] one bed
       *[other] { $beds } beds
    }.
round-over-already = Today's round is over.
round-left-out = Left out: { $beds }.
note-title = { $who } was at { $site } on { $day }.
note-done = Done: { $what }.
note-found = Found: { $what }.
note-of-beds = { $what } ({ $beds })
note-until = Until the next visit:
note-wait = Pick nothing from the { $bed } before { $day }: it was sprayed.
note-wait-label = The { $bed } was sprayed: pick nothing from it until the wait on the label is over.
note-next = We come again about { $day }.
note-offer = This would go to { $name }:
note-button-send = send
note-button-change = change
note-button-drop = do not send
note-dropped = The note was not sent.
note-type = Write what shall go instead.
note-gone = This note has been sent already, or is no longer there.
note-sent = The note has gone to { $name }.
note-no-chat = { $name } has no chat with me: please pass it on yourself. { $text }
visits-title = Visits, { $from } to { $until }.
visits-site = { $site }: { $visits }.
visits-made = { $day } { $who } ({ $count ->
        [1] one record
       *[other] { $count } records
    })
visits-due = { $became ->
        [missed] missed
       *[open] open
    } since { $day }: { $jobs }
visits-none = none made, none missed
visits-the-crew = the crew
label-opens-nothing = This label opens nothing for you. Write what you want to know.
label-new = The old label of { $bed } opens nothing any more. The new link: { $link }
label-usage = Write /codes and the id of a roof for the links of its beds, or /newcode ROOF/BED so that an old label opens nothing any more. Roofs: { $sites }
draft-bed = Understood: a new { $kind ->
        [basket] basket
        [tray] tray
        [pot] pot
        [bag] bag
       *[box] box
    } at { $site }, to be called "{ $name }": { $size }.
draft-bed-sun =
    { $how ->
        [told] Direct sun on a clear day: { $hours } h.
        [walls] Its sun is worked out from the walls there.
       *[usual] You said nothing of its sun: I count { $hours } h.
    }
draft-bed-rest = House mix, open to the rain, no net, until you say otherwise.
new-bed-not-yours = You don't look after that place, so nothing is stored.
bot-button-picture = picture
bot-no-picture = There is no picture of this answer.
place-button-new = a new roof lies here
place-button-round = the round starts here
bot-keep-visits = Days on which you worked on a roof, or had a note after a visit: { $count }. They go after 120 days.
menu-note = notes for today's clients
note-none = There is no work of yours today that a client has not been told of.
crew-help = /round leads through today's roofs, bed by bed. "New site: NAME" adds a roof, "new box at NAME's, 4 by 3 ft, a foot deep, sun till two" a bed. /note writes to the clients of today. /codes gives links for the labels on beds.
draft-right = Is that right?
draft-bed-again = Not kept. Write it again with its measures: "new box at Meera's, 4 by 3 ft, a foot deep, sun till two".
draft-bed-kept = Kept: { $bed } ({ $id }).
draft-button-change = change
site-ask-name = What is the new place called?
site-ask-place = Where is { $name }? Send its location (the paper clip, then location), or write the city.
site-understood = Understood: a new place, "{ $name }", at { $latitude }, { $longitude }, { $how ->
        [city] the middle of { $near }
        [far] { $km } km from { $near }, the nearest place I know
       *[near] by { $near }
    }. Height above the sea { $height } m and time zone { $zone }, as there. Is that right?
site-kept = Kept: { $name }. Its id is { $id }. Tell me its beds: "new box at { $name }, 4 by 3 ft, a foot deep".
site-added = { $who } has added a place: { $name } ({ $id }).
menu-round = today's round
menu-visits = visits made and missed
menu-newsite = add a roof
menu-codes = links for the labels
menu-newcode = make an old label useless
# What the crew writes without a command, parted by bars; of the "-of", "new-site" and "new-place" ones the rest of the message follows.
crew-words-round = round | today's round | start the round | my round today
crew-words-round-of = round: | round of
crew-words-visits = visits | visits this week | visits of this week | show the visits
crew-words-new-site = new site | add a site
crew-words-new-place = new place | new roof | new terrace | new balcony | add a roof | add a place
## Reminders, and jobs moved to another day
reminder-title =
    { $word ->
        [morning] Today, { $day }:
       *[eve] Tomorrow, { $day }:
    }
reminder-job =
    { $number }. { $job ->
        [spray] Spray
        [feed] Feed
        [pick] Pick
        [sow] Sow again
        [net] Net up
        [net-down] Net down
       *[other] { $job }
    }{ $crop ->
        [none] {""}
       *[other] {" "}{ $crop }
    }: { $beds }{ $part ->
        [evening] ; in the evening from { $from } to { $until }
        [dawn] ; before the sun is up, from { $from } to { $until }
       *[none] {""}
    }{ $since ->
        [none] {""}
       *[other] {" "}(open since { $since })
    }.
reminder-moved =
    { $number }. Not { $word ->
        [morning] today
       *[eve] tomorrow
    }: { $job ->
        [spray] spray
        [feed] feed
        [pick] pick
        [sow] sow again
        [net] net up
        [net-down] net down
       *[other] { $job }
    }{ $crop ->
        [none] {""}
       *[other] {" "}{ $crop }
    }, { $beds }. It is on { $day } now: { $by }.
reminder-mover =
    { $who ->
        [you] you moved it
        [someone] someone moved it
       *[other] { $who } moved it
    }
reminder-water =
    { $number }. From tomorrow water { $rhythm ->
        [none] no more, the rain brings enough
        [weekly] once a week
        [third] every third morning
        [second] every second morning
        [daily] each morning
        [twice] each morning and each evening
       *[thrice] three times a day
    } (until now { $before ->
        [none] not at all
        [weekly] once a week
        [third] every third morning
        [second] every second morning
        [daily] each morning
        [twice] each morning and each evening
       *[thrice] three times a day
    }): { $beds }{ $turn ->
        [none] {""}
       *[other] , about { $turn } a turn
    }.
reminder-button-done =
    { $number ->
        [none] done
       *[other] { $number } done
    }
reminder-button-move =
    { $number ->
        [none] move
       *[other] { $number } move
    }
reminder-button-why =
    { $number ->
        [none] why
       *[other] { $number } why
    }
reminder-button-undo = undo
reminder-button-leave = leave it
reminder-move-tomorrow = tomorrow, { $day }
reminder-move-days = in { $count } days, { $day }
reminder-move-ask = Which day instead? You can write it too: "move the spray to friday".
reminder-done-already = That is noted as done already.
reminder-taken-back = Taken back: what I had noted is gone.
bot-keep-reminders = What I told you last of each job, so that I remind you once: { $count }.
moved-by =
    { $who ->
        [you] You moved it to { $day }.
        [someone] It was moved to { $day }.
       *[other] { $who } moved it to { $day }.
    }
working-moved-by =
    { $who ->
        [you] { $bed }: you moved it to { $day }.
        [someone] { $bed }: it was moved to { $day }.
       *[other] { $bed }: { $who } moved it to { $day }.
    }
moved-to =
    Moved: { $job ->
        [spray] spray
        [feed] feed
        [pick] picking
        [sow] sowing
        [net] net up
        [net-down] net down
       *[other] { $job }
    }, { $beds }, to { $day }.
moved-but = { $bed }: that day will not do, so it is { $day } ({ $by }).
move-which-day = To which day?
move-not-then = That day is gone by, or too far off. To which day?
move-none =
    No { $job ->
        [spray] spray
        [feed] feed
        [pick] picking
        [sow] sowing
       *[net] work on a net
    } is due in the next { $days } days, so there is nothing to move.
choice-day = { $day }

# A job that is told not to be moved.
move-stays =
    Nothing moved. As planned: { $job ->
        [spray] spray
        [feed] feed
        [pick] picking
        [sow] sowing
        [net] net up
        [net-down] net down
       *[other] { $job }
    }, { $beds }, { $day }. For another day, write which.

# Courtesies, and groups.
bot-words-hello = hi | hello | hey | hello there | good morning | good evening | good afternoon | namaste | namaskar
bot-words-thanks = thanks | thank you | thanks a lot | thank you very much | many thanks | ok thanks | okay thanks | ok thank you | got it | got it thanks
bot-greeting = Namaste. Ask about water, sowing, pests or harvest on your roof, or write what was done.
bot-thanks = All right. Write when there is something to ask or to note.
bot-group-alone = In a group I answer in general only. About your own beds write to me alone.

## What waits behind "more"
year-turns = { $first }{ $second }{ $third }
year-say-more = By usual weather, which can be two weeks early or late. Say "more" for every month, or name a crop for its days.
build-mix = { $litres } of loose mix; it settles to { $settled }.

## Records of several things

recorded-bed-crop = For the { $crop } in it, tell me whether it was sown or planted there, and on which day.
recorded-bed-sown =
    In it: { $crop }, { $how ->
        [planted] planted
       *[sown] sown
    } { $day }.
record-other-later = Tell me the other work again after that.

## Water of another time of the year, and in vessels
water-of-time = For usual days around { $day }, not this week:
water-in-vessels = That is { $count } { $word } each time.
water-vessel-unknown = In { $word } I can't count yet: their size differs from house to house. Fill one from a litre bottle and write, like: the mug holds 700 ml.
record-vessel-unknown = No amount is noted: what fits into your { $word } is not known to me. Write it, like: the mug holds 700 ml.
record-which-amount = No amount is noted: I read more than one. Write the sum, like: 700 g.
record-on-which-day = On which day was it? Write it, like: 12 May.

## What is asked in general, what is not known here, what is done before anything else

never-eat = Do not eat it, raw or cooked: what comes up by itself can be poisonous, and nobody can tell a mushroom or a leaf by a message. Datura and oleander are poison in every part.
never-eat-do = Pull it with gloves, put it in the bin, away from children and animals. I have told the crew, so that someone looks at it.
caution-never-eat = if someone has eaten some, go to a hospital now and take a piece along; in India the emergency number is 112.
no-figures = I have no checked figures for { $plant }, and I won't guess from those of another plant. I have passed it to the crew: someone will get back to you here.
ask-of-what = I can't tell yet what that is about. Which plant or bed is it, and what do you want to know, or what was done?
ask-which-kind = Do you mean { $first }, or { $second }?
choice-kind = { $kind ->
        [water] how much water
        [harvest] when it is ready
        [sow] when to sow it
        [shade] whether it needs a net
        [spray] when to spray
        [feed] what feed
        [mix] what goes in the mix
        [build] what to build it of
        [load] how heavy it is
        [space] how many plants fit
        [seed] how much seed
        [due] what is due
       *[trouble] what is wrong with it
    }
spray-general = { $material } in general: in the cool only, at first light or near sunset, below { $limit }, in no wind and with no rain due. Again after { $every } days; { $rain } mm of rain in a day washes it off.
feed-general = In general: every { $every } days, weak, on mix that was watered first, in the evening.
water-general = In general the finger decides: water where it is dry a finger-joint down, early in the morning.
due-missed = Due { $span ->
       *[day] on { $first }
        [days] from { $first } to { $last }
    } and not noted as done (watering is not counted here):
due-missed-none = Nothing that was due { $span ->
       *[day] on { $first }
        [days] from { $first } to { $last }
    } is open: it was done, or nothing was due. Watering is not counted here.
edge-fall = Nothing stands on an edge or ledge, tied or not: what falls can kill. Set the pots on the floor behind the wall, low and wide ones, the heavy side down, and tie tall plants to something built in. I have passed it to the crew, so that someone looks at the place.
caution-edge = don't lean over to fix anything; keep people from below until it is cleared.

## What was done, where it was not understood.
ask-what-done = What was done there?
choice-done = { $job ->
        [feed] fed it
        [spray] sprayed it
        [pick] picked from it
       *[other] watered it
    }

## Causes that nothing parts yet
trouble-may-be = It may be { $first } or { $second }; what you tell of it fits both.
trouble-in-common = { $part ->
        [pest] Whichever it is: look under the leaves early in the morning and by torch after dark, pick off by hand what you find, wash soft insects off with a firm jet, and put the worst leaves into a bag. Spray nothing yet.
        [leaf] Whichever it is: look at both sides of the leaves early in the morning, pick the worst ones into a bag, keep the rest dry, and water only where the mix is dry a finger-joint down. Spray nothing yet.
        [fruit] Whichever it is: pick off the spoilt ones into a bag, cut one open and look inside, keep the mix evenly moist and the fruit dry. Spray nothing yet.
        [flower] Whichever it is: shake a flower over white paper and look, keep the mix evenly moist, give shade at noon in great heat. Feed and spray nothing yet.
        [seedling] Whichever it is: take out the fallen ones with a spoon of the mix round them, give air and light, and water only when the top is dry. Feed and spray nothing yet.
       *[plant] Whichever it is: feel the mix a finger deep. If it is dry, water it through; if it is wet, wait and see that the drain holes are open. Shade at noon; look under the leaves and at the foot of the stem. Feed and spray nothing yet.
    }

## What is never helped with, and who needs people now.
declined-harm = I will not help with anything that is meant to harm a person, an animal or someone else's plants. You may ask how to keep animals off your own beds without hurting them.
despair-first = Please do not stay alone with this now: go to someone near you, or ring someone, and tell them how it is. A doctor can help.
mix-swollen = Soaked, { $mass } of pressed { $material } swells to { $litres }.
due-round = { $how ->
       *[one] Work is on one roof only: { $sites }.
        [several] In this order: { $sites }. It is the shorter way from the first; start from the other end if that is nearer to you.
    }

## Shoots eaten raw

caution-raw-shoots = pregnant women, small children, old and ill people eat shoots only cooked through. Nobody eats a tray that smells, is slimy, has grey or black mould, or was sprayed with anything.

## A turn left out

water-skip-turn = Leave this turn while it is moist a finger-joint down; feel it again at the next one, and water then if it is dry.
## Water in one go
water-once = That is the whole day's: pour it in two or three rounds, some minutes apart, and stop when it runs out below. In this heat twice a day is safer; mulch and a net at noon help it through.
ask-new-bed-size = How big is it? Length and width, or how far across, and how deep; of a bag, its litres.
mix-bags = Of bags of { $holds } that is { $bags }, if what is in them is loose and ready.
bed-counted = { $count } × { $bed }
mix-groups = { $litres } of loose mix for { $beds } in all; it settles to { $settled }.
mix-have =
    { $how ->
        [short] { $holds } of ready mix is too little for that.
        [enough] { $holds } of ready mix is enough for all of them.
       *[fills] { $holds } of ready mix fills { $fills } of them.
    }
load-groups = { $beds }, wet: { $mass } together, with plants. The { $bed } lays most on the slab under it, { $load }.
water-of-all = For all { $count } of them: { $day } a day.
space-row = { $length } of row
