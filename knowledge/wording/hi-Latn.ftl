# What rooftend says, in romanised Hindi. The keys are those of the English file.
# A bed, a crop or a material stands before a colon or a comma: its name may be English and takes no ending.

## Small pieces

day = { $weekday } { $date } { $month }
day-either-way = { $day } ke aas-paas, ek din aage-peeche
day-span = { $day } ke aas-paas ({ $low } se { $high } ke beech)
span = { $low } se { $high }
and-last = { $all } aur { $last }
weekday-0 = Somvar
weekday-1 = Mangalvar
weekday-2 = Budhvar
weekday-3 = Guruvar
weekday-4 = Shukravar
weekday-5 = Shanivar
weekday-6 = Ravivar
month-1 = Jan
month-2 = Feb
month-3 = March
month-4 = April
month-5 = May
month-6 = June
month-7 = July
month-8 = Aug
month-9 = Sept
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
unit-in = { $n } inch
unit-cm = { $n } cm
unit-ft2 = { $n } sq ft
unit-percent = { $n } %
unit-celsius = { $n } °C
unit-ml-per-l = har litre mein { $n } ml
unit-g-per-l = har litre mein { $n } g
unit-kn-m2 = { $n } kN/m²
bed-described =
    { $kind ->
        [tray] { $size } ki tray
        [pot] { $size } ka gamla
        [basket] { $size } ki tokri
        [bag] { $size } ka bag
       *[box] { $size } ka dabba
    }

## Water

water-past-heat =
    { $crop }: yeh garmi bardasht se zyada hai. Din mein { $tmax }, aur { $limit } se upar { $beyond ->
        [bolts] phool ki dandi nikal aati hai
        [turns-bitter] kadwahat aa jaati hai
        [drops-flowers] phool jhad jaate hain
        [scorches] paudha jhulas jaata hai
       *[stops] badhat ruk jaati hai
    }. Paani se paudha bach jayega, par panpega nahi.
water-past-cold = { $crop }: yeh thand bardasht se zyada hai. Raat mein { $tmin }, aur { $limit } se neeche paudhe ko nuksaan hota hai. Abhi paani kam lagta hai.
water-rhythm =
    { $rhythm ->
        [none] { $bed }: is hafte paani na dein, jitna sookhega baarish usse zyada degi.
        [weekly] { $bed }: is hafte ek baar kareeb { $turn } paani dein (kul { $week }).
        [third] { $bed }: har teesre din subah kareeb { $turn } paani dein (hafte mein kul { $week }).
        [second] { $bed }: ek din chhodkar subah kareeb { $turn } paani dein (hafte mein kul { $week }).
        [once] { $bed }: din mein ek hi baar, kareeb { $turn } ek saath dein (hafte mein kul { $week }).
        [daily] { $bed }: roz subah kareeb { $turn } paani dein (hafte mein kul { $week }).
        [twice] { $bed }: roz subah kareeb { $turn } aur shaam ko kareeb { $turn } paani dein (hafte mein kul { $week }).
       *[thrice] { $bed }: roz teen baar kareeb { $turn } paani dein: tadke, dopahar ko chhaon mein, shaam ko (hafte mein kul { $week }).
    }
water-more-beds = Aur { $count } bed baaki; kisi ka naam lekar poochhein.
water-all-beds = Sab bed milakar roz { $day }.
water-reason =
    Roz { $loss } paani sookhta hai{ $air ->
        [dry] : din mein { $tmax } aur hawa sookhi hai.
        [wet] ; is hafte { $rain } baarish ka andaza hai.
        [wet-usual] ; aise hafte mein { $rain } baarish hoti hai.
       *[plain] : din mein { $tmax } tak garmi hai.
    }
water-check =
    { $hot ->
        [hot] Pehle pipe ka garam paani nikaal dein; ungli ke ek por neeche mitti ab bhi nam ho to is baar rehne dein.
       *[mild] Ungli ke ek por neeche mitti ab bhi nam ho to is baar rehne dein.
    }
assumed-bed = Aapke bed ki jaankari nahi hai, isliye yeh maana: { $bed }, 6 ghante dhoop. Apna batayein to hisaab behtar hoga.
assumed-sun = Seedhi dhoop { $hours } ghante maani hai; kam ya zyada ho to batayein.
assumed-net = Jaali ko { $cut } dhoop rokne wali maana hai; doosri ho to batayein.
assumed-usual-days = Aapki chhat ke aane wale dinon ka mausam nahi mila; { $place } ke is mausam ke aam din maane hain, isliye hisaab mota hai.
ask-which-bed = Kis bed ke baare mein?
ask-what-bed = Kaun si fasal hai, aur bed kitna bada hai? Jaise: 12 inch ke gamle mein tamatar.
ask-which-place = Aap kis shehar mein hain? Hisaab ke liye wahan ka mausam chahiye.
choice-bed = { $bed }
choice-place = { $place }
choice-size = { $size }
choice-article = { $title }
choice-water = Tamatar ke bag mein kitna paani dein?
choice-harvest = Sarson wali tray kab kategi?
choice-person = Kisi insaan se baat karaiye

## Why: water

working-bed = Hisaab, { $bed }:
working-forecast = Mausam: { $day } ka forecast, ek-ek din ka.
working-forecast-undated = Mausam: forecast ki file, ek-ek din ka; usmein nahi likha ki kab bani.
working-usual-days = Mausam: 7 mein se { $days } din { $place } ke aam din maane ({ $period }, { $distance } km door); asli din inse alag hote hain.
working-no-weather = Mausam: kuchh pata nahi.
working-dry-air = Sookhi jagah mein nami isse kam hoti hai: saal ki baarish hawa ki kheench ka { $index } hai (semi-arid { $limit } se kam; { $class }), isliye dew point raat ke nyuntam se { $kelvins } °C neeche maana hai ({ $source }).
working-showers = Aam baarish: { $rain }, 7 mein se kareeb { $days } din, baaki sookhe (din mahine ki baarish se, ek andaza). Baarish ka din bed bhar deta hai; paani beech ke sookhe dinon ka gina hai.
working-reference = Khule mein ghaas se udne wala paani (reference ET): roz { $et } ({ $source }, Penman-Monteith).
working-procedure =
    Naapa nahi gaya: { $what ->
        [sunshine] sooraj ki urja, dhoop ke ghanton se nikaali
        [solar] sooraj ki urja, din-raat ke taapmaan ke fark se nikaali
        [dew-point] hawa ki nami, raat ke sabse kam taapmaan se nikaali
        [humidity-mean] hawa mein bhaap ka dabaav, ausat nami se nikaala
        [wind] hawa, 2 m/s maani
       *[sunless] bina dhoop wale din ke baadal, andaze se maane
    } ({ $source }).
working-light = Seedhi dhoop { $hours } ghante{ $shade ->
        [open] {""}
       *[net] , aur { $net } dhoop rokne wali jaali
    }: bed ka apna hisaab roz { $et } (seedhi kiran eq. 28 se; bikhri roshni Erbs, Klein aur Duffie 1982 se).
working-coefficients = Fasal ka gunank: patte { $basal } + khuli geeli satah { $evaporation }, zyada se zyada { $highest } (fao56: eq. 70 se 76; chhat par paudhe kam hon to 5 % zyada, yeh apna andaza hai).
working-loss = Sookhte kinaron samet: roz { $loss }, { $area } par = roz { $day }; hafte ki baarish { $rain }.
working-surface = Upar ki parat: khule hisse se roz { $bare } sookhta hai (fao56: eq. 77) aur { $limit } ke baad upar sookha dikhta hai (aam chalan, koi source nahi).
working-roots = Jadein { $limit } tak le sakti hain, uske baad paani kam padta hai (fao56: eq. 83, mitti mein aasani se milne wale paani se). Jo pehle aaye wahi tay karta hai: { $decides ->
        [surface] upar ki parat.
       *[roots] jadein.
    }
working-rhythm =
    Yaani hafte mein { $often } baar paani; tay hua: { $rhythm ->
        [none] paani nahi
        [weekly] hafte mein ek baar
        [third] har teesre din
        [second] ek din chhodkar
        [daily] roz ek baar
        [twice] roz do baar
       *[thrice] roz teen baar
    }.
working-doubt =
    Andaza hai ki das mein se nau baar sahi maatra isi beech hogi; sabse bada shak yeh ki { $doubt ->
        [sun-spell] bed par dhoop kis samay aati hai
        [bed] yeh bed khud kitna tez sookhta hai
        [weather] mausam kaisa rahega
        [small-stand] garam chhat par chhote bed se kitna zyada sookhta hai
        [sides] kinare kitni jaldi sookhte hain
        [leaves] patton se kitna paani udta hai
        [wind] hawa kitni hai, jo pata nahi
        [humidity] nami kitni hai, jo pata nahi
        [rain] baarish kitni hogi
        [surface-limit] upar ki parat kab sookhi dikhti hai
       *[root-limit] mitti kitna paani deti hai
    }.

## Harvest

harvest-first =
    { $when ->
        [now] { $crop } ({ $bed }): { $day } se tudai ka samay chal raha hai, aaj hi dekh lein.
        [past] { $crop } ({ $bed }): taiyar hone ka din { $day } tha aur tudai ka samay nikal chuka hai; aaj dekh lein, khatm ho to hata dein.
       *[ahead] { $way ->
            [tray] { $crop }, { $bed }: katai { $day }.
           *[bed] { $crop }, { $bed }: pehli tudai { $day }.
        }
    }
harvest-reason = Din { $tmax } aur raat { $tmin } ke hisaab se gina: kul kareeb { $days } din.
harvest-other-start = Ek hi tareekh pata hai, isliye paudh kitne din ki thi yeh andaza hai; tareekh se zyada aankh par bharosa karein.
harvest-signs = { $signs }
harvest-expected = Ummeed: kul { $grams }.
harvest-say-when =
    { $how ->
        [planted] { $crop }: paudh kab lagayi thi? Batayein to din nikal aayega.
       *[sown] { $crop }: beej kab boye the? Batayein to din nikal aayega.
    }
ask-what-grows = { $bed }: ismein kya laga hai, aur kab se?
ask-which-crop = Kaun si fasal, aur kab boi thi?
working-thermal-time =
    { $crop }, { $how ->
        [planted] paudh lagi { $day }
       *[sown] beej boye { $day }
    }: { $base } se upar { $sum } degree-din chahiye, { $upper } se upar kuchh nahi judta ({ $source }).
working-harvest-days = Gine dinon mein se { $days } din { $place } ke aam din hain, forecast nahi.
working-claim = Andaza hai ki das mein se nau baar sahi din isi beech hoga: beej aur din ek se nahi hote.
working-yield =
    { $spreads ->
        [yes] Upaj: { $grams }, patte { $area } jagah lete hain, bed ke upar se zyada ({ $source }); jadon ki jagah kam hai, isliye neeche ka aankda ghataya (andaza).
       *[no] Upaj: { $area } mein { $grams } ({ $source }).
    }

## Mix and build

mix-of-litres = { $litres } dheela mix, jo baithkar kareeb { $settled } rehta hai:
mix-recipe = { $mix }, naapkar (taulkar nahi): { $parts }. Size batayein to litre mein hisaab mil jayega.
mix-litres =
    { $count ->
        [1] { $bed }: dheeli mitti { $litres } lagegi; baithkar { $settled } reh jayegi.
       *[other] { $bed }, { $count } nag: kul dheeli mitti { $litres } lagegi; baithkar { $settled } reh jayegi.
    }
mix-parts = { $parts }.
mix-part = { $material } { $amount }
mix-share = { $material } { $percent }
mix-addition = har litre mein { $material } { $grams } g
build-parts = { $bed }: paani nikalne wali tray { $trays } ({ $tray } ki{ $said ->
        [no] {" "}maani; doosri ho to batayein
       *[yes] {""}
    }), kinare ki patti { $sides } ({ $height } oonchi), astar ka kapda { $cloth }, taar { $wire }.
assumed-depth = Gehrai nahi batayi, isliye { $depth } maani hai.
ask-size = Dabba kitna bada hai? Lambai, chaudai aur gehrai batayein.
working-mix = Baithne ke baad { $settled }, upar { $rim } khaali chhodkar; dheeli mitti baithkar { $settling } ghatti hai, isliye { $loose }.
working-recipe = { $mix }: { $parts }.
working-trays = Sab tray ek hi rukh mein, kinare se kinara phansakar: lambai mein { $along }, chaudai mein { $across }; dono rukh mein se woh jismein kam lagein.
working-parts = Kinare ki patti ek baar chaaron or; kapda tale aur kinaron par ek hi tukde mein, upar se 10 cm bahar; chaaron konon par har 15 cm oonchai par 40 cm taar ka bandhan (aam chalan, koi source nahi).

## Care, hand-over, none

article = { $answer }
working-article = Is lekh se: { $title }.
which-article = Inmein se kiske baare mein?
handed-over-person = Team ko bata diya hai: koi aapko yahin jawab dega.
handed-over-kind =
    { $kind ->
        [sow] Kab kya boyein, iska
        [shade] Jaali aur chhaon ka
        [spray] Spray ka
        [feed] Khaad ka
        [load] Chhat par wazan ka
        [space] Paudhon ki doori ka
        [seed] Beej ki maatra ka
        [trouble] Paudhe ko kya hua, iska
        [due] Kaun sa kaam kab karna hai, iska
       *[other] Iska
    } hisaab abhi mujhse nahi hota, isliye aapka sawaal team ko bhej diya hai.
handed-over-unknown = Iska theek jawab mere paas nahi hai. Team ko bhej diya hai: koi aapko yahin jawab dega.
mix-without = Mere sabhi nuskhon mein { $material } hai: uske bina aazmaya hua nuskha mere paas nahi hai. Team ko bhej diya hai.
declined = Ismein mujhse madad nahi ho payegi. Mujhe aapki chhat ke bed, paani, buvai aur tudai ki jaankari hai.
not-understood = Samajh nahi aaya. Aise poochhkar dekhein:

## Records

recorded-job =
    Likh liya: { $job ->
        [water] paani diya
        [spray] spray kiya
        [feed] khaad di
        [flush] saade paani se dhoya
        [thin] ghane paudhe nikaale
        [weed] nirai ki
        [prune] kaat-chhaant ki
        [stake] sahara lagaya
        [pick] tudai ki
        [pull] paudhe ukhaade
        [net] jaali
        [mix] nayi mitti
        [top-up] upar se mitti bhari
        [clear] khaali kiya
        [mulch] mulch bichhayi
        [mend] marammat ki
       *[check] dekh liya
    }{ $amount ->
        [none] {""}
       *[other] , { $amount }
    }, { $beds }, { $day }.
recorded-sown =
    Likh liya: { $crop }, { $how ->
        [planted] paudh lagayi
       *[sown] beej boye
    }, { $beds }, { $day }.
recorded-seen =
    Likh liya, { $beds }, { $day }: { $what ->
        [still-wet] ab bhi geela
        [dry-early] samay se pehle sookha
       *[ran-through] paani seedha neeche nikal gaya
    }.
record-stranger = Aapse abhi pehchaan nahi hai, isliye aapka kaam yahan nahi likha ja sakta. Team se kahein ki aapko jod dein.
record-future = { $day } abhi aaya nahi. Kaam kis din hua?
record-not-yours = { $bed }: iska kaam aapke naam se nahi likha ja sakta.
record-no-bed = Yahan abhi aapka koi bed nahi hai. Baat team ko bhej di hai.
record-unknown = Samajh nahi aaya ki kya kaam hua, isliye kuchh nahi likha; baat team ko bhej di hai.
record-which-crop = Kaun si fasal thi?
record-not-kept = Yeh likha nahi ja saka, kahin darj nahi hua. Dobara bhejein.

## Cautions

caution = Saavdhani: { $text }
caution-text = { $text }
caution-weight = poora bheegne par { $weight } tak, paudhe aur log alag. Chhat jhel legi, yeh yahan se nahi kaha ja sakta: banane se pehle aise structural engineer se poochhein jisne chhat dekhi ho.
caution-load = chhat ya balcony wazan jhel legi, yeh yahan se nahi kaha ja sakta. Aise structural engineer se poochhein jisne slab dekha ho; tab tak bhaari cheezein kinare se door rakhein.
caution-spray = maatra aur todne se pehle rukne ke din label se lein; dhoop ya hawa mein nahi, dastane aur mask pehankar.

## Front

demo-greeting = Yeh Nagpur ka banavati bageecha hai; grahak aur mausam bhi banavati hain. Teen cheezein poochhkar dekhein:
demo-note = (demo: banavati bageecha, banavati mausam; yahan jo likha jaye woh baad mein mita diya jata hai)

## Sow

season-day = { $date } { $month }
season-day-year = { $date } { $month } { $year }
sow-fits =
    { $fits ->
        [yes] { $when ->
            [day] { $crop }: haan, { $day } theek hai. { $way ->
                [seedbed] Nursery mein beej kareeb { $until } tak; paudh 25 se 35 din baad bahar lagegi.
                [pieces] Seedhe jagah par { $pieces } kareeb { $until } tak lagayein.
                [planted] Paudh kareeb { $until } tak lagayein.
                [tray] Tray mein kareeb { $until } tak.
               *[bed] Kareeb { $until } tak bo sakte hain.
            }
           *[today] { $crop }: haan, abhi. { $way ->
                [seedbed] Nursery mein beej kareeb { $until } tak; paudh 25 se 35 din baad bahar lagegi.
                [pieces] Seedhe jagah par { $pieces } kareeb { $until } tak lagayein.
                [planted] Paudh kareeb { $until } tak lagayein.
                [tray] Tray mein kareeb { $until } tak.
               *[bed] Kareeb { $until } tak bo sakte hain.
            }
        }
        [year] { $crop }: haan, abhi; yahan { $way ->
            [tray] tray mein poore saal
           *[bed] poore saal
        } lag sakta hai.
        [soon] { $crop }: abhi nahi. { $way ->
            [seedbed] Nursery mein beej kareeb { $from } se ({ $until } tak); paudh 25 se 35 din baad bahar lagegi.
            [pieces] Seedhe jagah par { $pieces } kareeb { $from } se lagayein ({ $until } tak).
            [planted] Paudh kareeb { $from } se lagayein ({ $until } tak).
            [tray] Tray mein kareeb { $from } se ({ $until } tak).
           *[bed] Kareeb { $from } se boyein ({ $until } tak).
        }
        [late] { $crop }: samay abhi-abhi nikal gaya. { $way ->
            [seedbed] Agli baar nursery mein beej kareeb { $from } se { $until } tak; paudh 25 se 35 din baad bahar lagegi.
            [pieces] Agli baar seedhe jagah par { $pieces } kareeb { $from } se { $until } tak lagayein.
            [planted] Agli baar paudh kareeb { $from } se { $until } tak lagayein.
            [tray] Agli baar tray mein kareeb { $from } se { $until } tak.
           *[bed] Agli baar kareeb { $from } se { $until } tak boyein.
        }
       *[no] { $when ->
            [day] { $crop }: { $day } iska samay nahi hai.
           *[today] { $crop }: abhi nahi.
        } { $way ->
            [seedbed] Nursery mein beej kareeb { $from } se { $until } tak; paudh 25 se 35 din baad bahar lagegi.
            [pieces] Seedhe jagah par { $pieces } kareeb { $from } se { $until } tak lagayein.
            [planted] Paudh kareeb { $from } se { $until } tak lagayein.
            [tray] Tray mein kareeb { $from } se { $until } tak.
           *[bed] Kareeb { $from } se { $until } tak boyein.
        }
    }
planted-pieces =
    { $piece ->
        [clove] kaliyan
        [tuber] kand
        [rhizome] gaanth ke tukde
        [slip] bel ya kalle ke tukde
        [cutting] kalam
        [runner] jad wale runner
       *[bulb] chhoti gaanthein
    }
sow-main = Lamba mausam: kareeb { $from } se { $until } tak.
sow-marginal = Mushkil se: { $crop } tab bhi apni had par rahega. Subah ki dhoop, dopahar ko jaali, aur kam umr mein hi tod lein.
sow-never = { $crop }: yahan khule mein saal ke kisi samay fasal tak nahi pahunchta.
sow-hot =
    { $when ->
        [before] Pehle lagayein to theek se tudai hone se pehle { $limit } se garam hafte milenge; tab { $beyond ->
            [bolts] phool ki dandi nikal aati hai
            [turns-bitter] kadwahat aa jaati hai
            [drops-flowers] phool jhad jaate hain
            [scorches] paudha jhulas jaata hai
           *[stops] badhat ruk jaati hai
        }.
        [later] Theek se tudai hone se pehle, kareeb { $on } se, din { $tmax } ke ho jayenge; { $limit } se upar { $beyond ->
            [bolts] phool ki dandi nikal aati hai
            [turns-bitter] kadwahat aa jaati hai
            [drops-flowers] phool jhad jaate hain
            [scorches] paudha jhulas jaata hai
           *[stops] badhat ruk jaati hai
        }.
       *[now] Garmi zyada hai: din mein { $tmax }, aur { $limit } se upar { $beyond ->
            [bolts] phool ki dandi nikal aati hai
            [turns-bitter] kadwahat aa jaati hai
            [drops-flowers] phool jhad jaate hain
            [scorches] paudha jhulas jaata hai
           *[stops] badhat ruk jaati hai
        }.
    }
sow-cold =
    { $when ->
        [before] Pehle lagayein to { $limit } se thandi raatein milengi, unse nuksaan hota hai.
        [later] Kareeb { $on } se raat { $tmin } ki hogi; { $limit } se neeche nuksaan hota hai.
       *[now] Thand zyada hai: raat mein { $tmin }, aur { $limit } se neeche nuksaan hota hai.
    }
sow-long-day =
    { $when ->
        [before] Pehle lagayein to { $limit } ghante se lambe din milenge, tab phool ki dandi nikal aati hai.
       *[now] Kareeb { $on } se din { $limit } ghante se lamba ho jata hai, tab phool ki dandi nikal aati hai.
    }
sow-seed-hot =
    { $when ->
        [before] Pehle { $what ->
            [pieces] tukdon ke liye garmi zyada hai: din-raat ka ausat { $limit } se upar ho to woh pade rehte hain ya sadte hain
           *[seed] beej ke liye garmi zyada hai: din-raat ka ausat { $limit } se upar ho to nahi ugta
        }.
       *[now] { $what ->
            [pieces] Tukdon ke liye garmi zyada hai: din-raat ka ausat { $mean }, aur { $limit } se upar woh pade rehte hain ya sadte hain.
           *[seed] Beej ke liye garmi zyada hai: din-raat ka ausat { $mean }, aur { $limit } se upar nahi ugta.
        }
    }
sow-seed-cold =
    { $when ->
        [before] Pehle { $what ->
            [pieces] tukdon ke liye thand zyada hai: din-raat ka ausat { $limit } se neeche ho to ankur nahi nikalte
           *[seed] beej ke liye thand zyada hai: din-raat ka ausat { $limit } se neeche ho to nahi ugta
        }.
       *[now] { $what ->
            [pieces] Tukdon ke liye thand zyada hai: din-raat ka ausat { $mean }, aur { $limit } se neeche ankur nahi nikalte.
           *[seed] Beej ke liye thand zyada hai: din-raat ka ausat { $mean }, aur { $limit } se neeche nahi ugta.
        }
    }
sow-slow = Thand itni hai ki samay par fasal nahi milegi.
sow-shows =
    { $what ->
        [pieces] Mix mein nami rahe to naye ankur { $days } din mein dikhenge.
       *[seed] Nami bani rahe to beej { $days } din mein ugega.
    }
sow-shows-on =
    { $when ->
        [past] { $crop }, { $sown } ko boya: ab tak ({ $day }) ug jana tha. Mitti hataakar beej dekhein; gal gaya ho to dobara boyein.
       *[ahead] { $crop }, { $sown } ko boya: { $day } ugna chahiye; upar ki mitti nam rakhein.
    }
sow-pick =
    { $end ->
        [none] Pehli tudai kareeb { $day }.
        [tray] Katai kareeb { $day }.
        [cold] Pehli tudai kareeb { $day }; kareeb { $on } se raatein iske liye thandi hongi, tab tak samet lein.
        [drops-flowers] Pehli tudai kareeb { $day }; kareeb { $on } se garmi mein phool jhadenge.
        [stops] Pehli tudai kareeb { $day }; kareeb { $on } se garmi mein badhat rukegi.
        [scorches] Pehli tudai kareeb { $day }; kareeb { $on } se garmi mein jhulsega, pehle hi tod lein.
        [turns-bitter] Pehli tudai kareeb { $day }; kareeb { $on } se kadwahat aayegi, pehle hi poora kaat lein.
       *[bolts] Pehli tudai kareeb { $day }; kareeb { $on } se phool ki dandi niklegi: dikhte hi poora kaat lein.
    }
sow-reckoned-for = Hisaab { $place } ka hai; aap kahin aur hain to batayein.
sow-backwards = { $day } ko paudh lagani ho to nursery mein beej { $from } se { $until } ke beech daalein.
sow-succession = Abhi ek tray mein kareeb { $days } din lagte hain: { $trays } tray hon to har { $every } din par ek boyein, aur har { $every } din par ek kategi.
sow-shallow = Par { $bed } sirf { $depth } gehra hai; { $crop }: { $needs } chahiye.
sow-dark = Par { $bed } mein seedhi dhoop kareeb { $hours } ghante hai; { $crop }: { $needs } ghante chahiye.
sow-saplings = { $bed }: { $plants } paudhe aayenge; { $raised } paudh taiyar karein, kuchh kharab hoti hain.
sow-ask-crop = Kaun si fasal boni hai?
sow-unknown-crop = “{ $crop }” kab boyein, iski jaanchi hui jaankari mere paas nahi hai, aur andaza theek nahi. Team ko bhej diya hai: koi aapko yahin jawab dega.
sow-no-usual-days = Aapki jagah ka aam mausam mere paas nahi hai, isliye kab kya boyein yeh nahi bata sakte. Team ko bhej diya hai.
sow-now =
    { $place ->
        [follows] { $when ->
            [day] { $bed }, { $crop } ke baad, { $day } ko: { $crops }.
           *[today] { $bed }, { $crop } ke baad, abhi: { $crops }.
        }
        [bed] { $when ->
            [day] { $bed }, { $day } ko: { $crops }.
           *[today] { $bed }, abhi: { $crops }.
        }
       *[roof] { $when ->
            [day] { $day } ke aas-paas yeh lag sakta hai: { $crops }.
           *[today] Abhi yeh lag sakta hai: { $crops }.
        }
    }
sow-now-trays = Ankur tray mein, chhaon mein: { $crops }.
sow-nothing =
    { $place ->
        [roof] Tab ke liye theek bethne wali koi fasal mere paas nahi: fasal se pehle garmi ya thand aa jayegi.
       *[bed] { $bed }: tab ke liye theek bethne wali koi fasal mere paas nahi; fasal se pehle garmi ya thand aa jayegi.
    }
sow-item =
    { $ends ->
        [year] { $crop } (poore saal)
       *[day] { $way ->
            [seedbed] { $crop } nursery mein (kareeb { $until } tak)
            [pieces] { $crop }, { $pieces } lagakar (kareeb { $until } tak)
           *[bed] { $crop } (kareeb { $until } tak)
        }
    }
sow-waits = Inke liye rukein: { $crops }.
sow-waiting = { $crop } kareeb { $from } se
sow-other-family = Sab doosre kul ki hain, taaki pichhli fasal ke keede aur rog aage na chalein.
working-sow-limits = { $crop }: hafte ka ausat din mein { $hot } se upar ho to zyada garm ({ $hot_source }), raat mein { $cold } se neeche ho to zyada thanda ({ $cold_source }).
working-sow-young = Chhote paudhe { $more } °C zyada seh lete hain, phool ya dandi aane se pehle (apna andaza).
working-sow-seed = Beej { $base } se { $ceiling } ke beech ugta hai, hafte bhar ka din-raat ka ausat ({ $source }).
working-sow-day-length = Din { $hours } ghante se lamba ho to phool ki dandi nikalti hai ({ $source }; din ki lambai fao56: eq. 34 se).
working-sow-growth =
    { $way ->
        [tray] Katai tak { $sum } degree-din chahiye ({ $source }), 30 din ke andar.
        [seedbed] Paudh lagne se pehli tudai tak { $sum } degree-din chahiye ({ $source }), usse pehle nursery mein 25 se 35 din (aam chalan, koi source nahi); phir tudai bhar khada rahe, kam se kam do hafte.
       *[bed] Pehli tudai tak { $sum } degree-din chahiye ({ $source }); phir tudai bhar khada rahe, kam se kam do hafte.
    }
working-sow-window = Isliye { $from } se { $until } tak lag sakta hai. Andaza hai ki das mein se nau baar sahi din isi beech honge: had aur hafte 1.5 °C idhar-udhar karke dekhe.
working-sow-walls = Deewaron se bachi seedhi dhoop, { $bed }, January se December tak ghante har din: { $hours } (suraj ki jagah Meeus se; deewar be-ant maani).
working-sow-list = Har fasal ko saal bhar ke hisaab se dekha, jaise ek fasal ke sawaal mein; jiski had sabse door hai woh pehle.
working-season-days =
    { $forecast ->
        [yes] Hafte: jahan tak forecast hai wahan tak wahi, phir { $place } ke aam din ({ $period }, { $distance } km door).
       *[no] Hafte: { $place } ke aam din ({ $period }, { $distance } km door).
    }
caution-work-heat = { $tmax } mein chhat par kaam subah-subah ya suraj dhalte hi karein, paani peete rahein; chakkar aaye to turant rukein.

# (end of: Sow)

## Shade

shade-net =
    { $when ->
        [keep] { $crop }: { $hangs } wali jaali { $ends ->
            [year] poore saal
           *[day] kareeb { $until } tak
        } lagi rehne dein; iske liye { $percent } theek hai.
        [now] { $optional ->
            [yes] { $crop }: abhi halki jaali, { $percent } tak, kareeb { $until } tak achhi rahegi; bina jaali bhi chal jayega.
           *[no] { $crop }: haan, abhi { $percent } wali jaali lagayein, { $ends ->
                [year] aur poore saal rakhein.
               *[day] kareeb { $until } tak.
            }
        }
       *[later] { $crop }: abhi jaali nahi. { $percent } wali jaali kareeb { $from } se{ $ends ->
            [year] , phir baaki saal.
           *[day] {" "}{ $until } tak.
        }
    }{ $reason ->
        [no] {""}
       *[yes] { $when ->
            [later] {" "}Jis hafte din { $above } se upar hon, tab chahiye.
           *[now] {" "}Din { $tmax } ke hain, aur { $above } se upar chahiye.
        }
    }
shade-none = { $crop }: jaali ki zaroorat nahi. Yahan saal ka koi hafta din mein { $above } se upar nahi jaata.
shade-offered =
    { $verdict ->
        [dark] { $percent }: zyada andhera{ $known ->
            [yes] {""} (roshni bachi { $left }, kam se kam { $least } mol har din chahiye).
           *[no] .
        }
        [thin] { $percent }: is garmi ke liye kam rokti hai.
       *[suits] { $percent }: theek{ $known ->
            [yes] {""} (roshni bachi { $left }, kam se kam { $least } mol har din chahiye).
           *[no] .
        }
    }
shade-dark-bed = { $hours } ghante dhoop mein bed waise hi { $crop } ki had tak chhaon mein hai: wahan ghani jaali nahi.
shade-past-limit =
    Jaali patte par chhaon karti hai, hawa thandi nahi karti: { $tmax } mein tab bhi { $beyond ->
        [bolts] phool ki dandi nikal aati hai
        [turns-bitter] kadwahat aa jaati hai
        [drops-flowers] phool jhad jaate hain
        [scorches] paudha jhulas jaata hai
       *[stops] badhat ruk jaati hai
    }.
shade-water = Jaali ke neeche kareeb { $less } % kam paani sookhta hai; ungli se dekhkar dein.
shade-how = Hari se safed jaali behtar; patton se ek haath upar, kinare khule taaki hawa chale.
shade-more-beds = Aur { $count } baaki; kisi ka naam lekar poochhein.
shade-ask-crop = Jaali kis fasal ke liye?
shade-tray = Ankur tray: ankur khade hone tak andhere mein dhakein, phir khuli chhaon ya subah ki 3 se 4 ghante dhoop. Dopahar ki dhoop ho to 50 % wali jaali lagayein, ya chhaon mein rakhein.
choice-crop = { $crop }
working-shade-weeks =
    { $from ->
        [crop] { $crop }: jis hafte ka ausat din mein { $above } se upar ho, jaali chahiye ({ $source }); jis hafte se tay hua usmein { $tmax }.
       *[limit] { $crop }: apna aankda nahi; garmi ki had se 2 °C pehle ({ $source }), yaani { $above } se jaali maani; jis hafte se tay hua usmein { $tmax }.
    }
working-shade-window = Jaali { $from } se { $until } tak; dono sire hafte 1.5 °C idhar-udhar karke nikale, yeh apna andaza hai.
working-shade-cut = Jaali roshni ka { $cut } pratishat roke ({ $source }).
working-shade-light = Bed par roshni, { $hours } ghante dhoop mein: har din har vargmeter { $light } mol (vikiran × 0.45 × 4.57 mol/MJ, mccree-1972; bed tak kitna, yeh fao56: eq. 28 aur Erbs, Klein aur Duffie 1982 se).
working-shade-least = Kam se kam { $least } chahiye ({ $source }), isliye jaali zyada se zyada { $densest } roke.
working-shade-water = Jaali ke neeche bed ka sookhna bina jaali ka { $share } hai (jaali roshni aur hawa rokti hai, hawa ki garmi nahi).
working-shade-wind = Band jaali par hawa q = ½ρv² se dabaati hai; khuli bunai par kam.
working-shade-tray = Tray: aam chalan, koi source nahi.
shade-storm = Aandhi se pehle jaali utaar lein aur thamne par phir lagayein; jo ud sakta hai use neeche rakh dein.
caution-net-wind = aandhi se pehle jaali utaar lein ({ $gust } km/h ka jhonka: har vargmeter par { $kilograms } kg tak); baandhne ke liye kinare se bahar na jhukein.

# (end of: Shade)

## Spray

spray-next =
    { $part ->
        [evening] { $bed }: { $material } { $day } ko shaam { $from } se { $until } ke beech chhidkein.
        [dawn] { $bed }: { $material } { $day } ko sooraj nikalne se pehle, { $from } se { $until } ke beech chhidkein. Baaki din bahut garam hai.
        [day] { $bed }: { $material } phir { $day } ko, thandi shaam mein, { $limit } se upar nahi.
       *[none] { $bed }: { $material } ka samay ho gaya hai, par agle das din mein koi theek ghanta nahi (sookha, bina hawa, { $limit } se neeche). Tab tak tadke tez dhaar se keede dho dein.
    }
spray-last = Pichhla spray { $last } ko tha; har { $every } din mein karte hain.
spray-no-record = Iska koi spray darj nahi hai; hua ho to din batayein. Har { $every } din mein karte hain.
spray-washed-off = { $day } ki baarish pichhla spray dho deti hai (ek din mein { $rain } mm ya zyada), isliye jaldi; label zyada faasla maange to label maanein.
spray-moved = Din aage kiya, wajah: { $by }.
spray-obstacle =
    { $what ->
        [rain] baarish
        [wind] hawa
        [picking] usse pehle todne layak fasal: pehle use todein
       *[heat] garmi
    }
spray-usual-day = Us din ka poorvanuman nahi hai, baarish aur hawa nahi gini: aasmaan dekh lein.
spray-look = Pehle taiyar fasal tod lein, aur wahin chhidkein jahan patton ke neeche keede milein.
spray-tray = Ankur wali tray par kuchh nahi chhidakte: kuchh din mein katkar poori khayi jaati hai. Hawa dein, paani kam karein; phaphoond wala hissa phenk dein.
spray-strength = saada { $material }: ek litre paani mein { $start } ml se shuru karein; { $dose } ml tak chalta hai, { $limit } ml se zyada kabhi nahi.
spray-add-soap = Tel ghulne ke liye kuchh boond halka sabun daalein; baar-baar hilayein.
spray-into = { $volume } L paani mein { $amount }.
spray-test-leaf = Pehle do patton par lagakar ek din dekhein; ghol usi shaam kaam mein lein, { $limit } se upar kabhi nahi.
spray-liquid = { $bed }: patte dono or bhigone mein kareeb { $litres } ghol lagega.
spray-which-product = Kaun si cheez chhidakni hai?
spray-which-bottle = { $material } ki bottle mein kya hai? Sahi matra kai guna alag hoti hai.
spray-what-was-it = Kya chhidka tha? Kitne din rukna hai, yeh bottle ke naam se tay hota hai. Tab tak na todein.
spray-bottle-unknown = Tab { $material } ki matra nahi batayi ja sakti: tez ghol patte jala deta hai. Label ki photo team ko bhejein; baat aage bhej di hai.
spray-by-label = Gaadhi { $material } keval apne label ke hisaab se, usse zyada kabhi nahi: bottlein kai guna kam-zyada tez hoti hain.
choice-plain-oil = shuddh tel
choice-concentrate = gaadhi dawa
choice-not-known = pata nahi
choice-material = { $material }
choice-other-product = koi aur cheez
spray-wait = { $material } ke baad todne se pehle { $days } din rukein, label zyada kahe to zyada. Todkar dhoyein.
spray-pick-from = { $material } { $on } ko chhidka: { $from } se todein, label zyada kahe to uske baad. Todkar dhoyein.
spray-taste = Label ke din hi maanein, woh kam bhi ho sakte hain; { $days } din swaad jaane ke liye hain.
spray-from-record =
    { $which ->
        [one] Is bed ka aakhri darj spray maana hai; koi aur tha to batayein.
       *[several] In bed ke darj spray mein sabse lamba intezaar isi ka hai; koi aur tha to batayein.
    }
spray-no-stronger = Nahi: ek litre mein { $limit } ml se zyada { $material } kabhi nahi. Zyada se patte jalte hain, asar jaldi nahi hota. Dekhein ki patton ke neeche tak pahunche, aur ek hafte baad dohrayein.
spray-no-double = Nahi: koi bhi cheez ho, label se zyada nahi. Zyada se patte jalte hain, khaane par reh jaati hai, asar jaldi nahi hota. Team ko uska naam batayein; baat aage bhej di hai.
spray-with-soap = Haan, neem ke tel mein thoda saada mulayam sabun chalta hai: ek litre mein kuchh boond, taaki tel ghule. Us bottle mein aur kuchh nahi.
spray-not-together = Nahi: ek baar mein ek hi cheez, apne label ke hisaab se. Tel ke saath gandhak ya taamba patte jala deta hai; label beech mein hafton ka faasla maangte hain.
spray-tender = Yeh surakshit hai, aisa nahi kaha ja sakta. Chhidakte samay aur sookhne tak paas mein na koi ho, na jaanwar; label isse zyada bhi maang sakta hai. Baat team ko bhej di hai.
spray-label =
    { $what ->
        [wait] Abhi na todein, na khayein. Kitne din rukna hai, yeh keval us dawa ka label batata hai: use padhein ya team ko dawa ka naam batayein. Baat aage bhej di hai.
       *[dose] Us dawa ki matra yahan se nahi batayi jaati: label tay karta hai, aur us par yeh fasal likhi honi chahiye. Krishi karyalay se bhi poochhein. Baat team ko bhej di hai.
    }
spray-against = { $steps }
caution-poison = bachche aur jaanwar door rakhein, aur label par likhe din poore hone tak usme se na khayein. Kisi ne nigal liya ya tabiyat bigde to bottle lekar turant doctor ya aspataal jayein.
caution-wait = yeh keval usi cheez ke liye hai; label zyada din kahe to label maanein.
caution-bees = phoolon par madhumakkhi ho tab nahi.
working-spray-rhythm = Chakkar: har { $every } din ({ $source }), isliye din { $due } banta hai.
working-spray-hours = { $tmin } aur { $tmax } se ghante-ghante ki garmi (parton-logan-1981: daily curve): patta sookhne tak zyada se zyada { $warmest }; seema { $limit }. Isme 2 °C ki chook ho sakti hai: thermometer dekh lein.
working-spray-liquid = Ghol: { $ground } zameen par phaile patte, har varg metre par 1 se 3 varg metre patta, har varg metre patte par 100 se 350 ml (andaaza).
working-spray-strength = Matra: ek litre mein { $dose } ml ({ $source }), sabse chhoti seema { $limit } ml ke bheetar ({ $limited }).
working-spray-wait = Todne se pehle: { $days } din ({ $source }).

# (end of: Spray)

## Feed

feed-next =
    { $began ->
        [last] { $bed }: agli khaad { $day }; har { $every } din, pichhli { $last } ko di thi.
        [mix] { $bed }: nayi mitti mein abhi khaad hai; pehli khaad { $day }, phir har { $every } din.
        [used-up] { $bed }: mitti ki khaad khatm maanein aur koi khaad darj nahi, isliye abhi dein, phir har { $every } din.
        [moved] { $bed }: khaad { $day } ko, phir har { $every } din mein.
       *[unknown] { $bed }: har { $every } din khaad dein. Koi khaad darj nahi hai; di ho to us din se ginein.
    }
feed-next-rhythm = Agli khaad { $day }: aam taur par har { $every } din. Us fasal ki poori jaankari nahi, isliye patli rakhein.
feed-strew = { $material }: poore bed mein { $grams }, tane se chaar ungal door, halka milakar paani dein.
feed-strew-area = { $material }, sookhi: har varg metre par { $grams } g, tane se chaar ungal door, halka milakar paani dein.
feed-steep = { $material }: kuchh din bhigokar chhaanein, aur itna patla karein ki har litre mein { $grams } g khali rahe, halki chai jaisa.
feed-dig-in = Sookhi keval khaali bed mein, buvai se do hafte pehle milakar: { $grams }. Khade paudhon ke paas sookhi kabhi nahi.
feed-dissolve = { $material }: ek litre paani mein { $grams } g, nam mitti par.
feed-pour = { $material }: ek litre paani mein { $millilitres } ml, nam mitti par.
feed-how =
    { $hot ->
        [hot] Yeh aam matra ki aadhi hai, kyunki { $tmax } garmi rahegi: pehle paani dein, khaad shaam ko.
       *[mild] Pehle paani dein, khaad shaam ko; patli aur baar-baar achchhi hai.
    }
feed-no-amount = Us khaad ki pakki matra yahan nahi hai: label maanein ya team se poochhein.
feed-short = Hisaab se mahine bhar mein bed mein { $grams } g nitrogen kam padega. Purane patte peele padein to samjhein.
feed-tray = Ankur wali tray ko khaad nahi chahiye: katne tak beej hi kaafi hai.
feed-tonic = Thoda daalne se nuksaan nahi, par usme khaad naam ki hi hai: chhilke aur rasoi ka kachra khaad ke dher mein daalein. Khaad ke liye compost ya kenchua khaad dein.
feed-label = Keval label ke hisaab se: ek litre mein kitne gram, yeh har bani hui khaad mein alag hai. Yahan se matra nahi batate; baat team ko bhej di hai.
feed-too-much = Abhi karein: upar padi khaad nikaalein, phir saada paani tab tak dein jab tak neeche se khulkar bahe, ek ghanta rukein, aisa do-teen baar aur. Mahine bhar koi khaad nahi; kuchh din chhaon mein rakhein.
caution-feed = sookhi mitti ya latke paudhe ko khaad nahi; liquid khaad kachche khaye jaane wale patton par na gire, todi cheez dhoyein.
caution-label-feed = label se zyada kabhi nahi, keval nam mitti par; zyada se jadein jalti hain.
caution-overfed = jab tak team na dekh le, usme se na khayein; patte bhoore hon ya latkein to paudha bachna mushkil hai.
working-nitrogen = { $day } se ab tak aur aage ek mahina: mitti aur khaad se { $released } g nitrogen paudhon ko milega (uska 40 se 80 %, andaaza), fasal { $taken } g legi, kami { $short } g.

# (end of: Feed)

## Load

load-bed =
    { $count ->
        [1] { $bed }, geela: paudhon samet { $mass }, aam paani dene ke baad kareeb { $usual }. Neeche ki slab par { $load } padta hai.
       *[other] { $count } nag, { $bed }, geele: kul { $mass }, aam paani dene ke baad kareeb { $usual }. Har ek ke neeche ki slab par { $load } padta hai.
    }
load-volume = Hamari halki mitti { $volume }: nam hone par kareeb { $wet }, poori tarah paani bhari ho to { $full } tak. Bageeche ki mitti geeli hone par { $soil } kilo prati litre hoti hai.
load-depth = Hamari halki mitti { $depth }, geeli: har square metre par { $mass } (har square foot par { $foot }), yaani { $load }; dhancha, paudhe aur log alag.
load-limit =
    Is chhat par engineer ki likhi limit { $limit } hai. { $larger ->
        [usual] Aam paani dene ke baad hi yeh usse zyada hai: na rakhein ya halka karein, aur yeh aankda lekar engineer se poochhein.
        [load] Sabse bhari haalat mein (naali band, paani bhara) yeh usse zyada hai: na rakhein ya halka karein, aur yeh aankda lekar engineer se phir poochhein.
       *[limit] Sabse bhari haalat mein bhi (naali band, paani bhara) yeh usse kam hai, par usi limit mein log aur baaki sab bhi aate hain: kitna bachta hai, yeh engineer batayenge.
    }
load-ask = Engineer se poochhein: log aur tanki chhodkar kitne kN/m², beam aur bhaar uthane wali deewarein kahan hain, slab theek haalat mein hai ya nahi.
load-engineer = Is chhat ke liye engineer ki likhi limit { $limit } hai. Box ke alawa usme kya-kya aata hai (log, tanki, baarish), yeh engineer hi batayenge.
load-no-engineer = Is chhat ke liye engineer ka koi aankda likha nahi hai, isliye haan: bhari kuchh bhi rakhne se pehle poochhein.
load-site =
    { $count ->
        [1] { $site } par do log aur boriyan aane ke din milakar: { $mass }.
       *[other] { $site } ke saare { $count } bed, do log, band naali aur boriyon tak milakar: { $mass }.
    }
load-heaviest = { $parts }. Apni jagah par sabse bhari { $bed }: neeche ki slab par { $load }.
load-one = { $bed } { $mass }
load-lower = Halka karne ke liye: kam gehrai, boxon ke beech zyada jagah, baag ki mitti nahi (geeli { $soil } kilo prati litre).
load-doubt =
    { $what ->
        [damage] Abhi upar aur kuchh na rakhein, aur bina jokhim ho sake to bhari cheezein hata dein: purani chhat, daraar ya seelan pehle structural engineer dekhein.
        [hanging] Abhi wahan na taangein: railing ya chhat ka hook geeli mitti ke liye nahi bana, aur gira to jaan ja sakti hai. Pehle aise kaam ka jaankar dekhe.
        [water] Ek litre paani ek kilo ka hota hai: 500 litre yaani drum se alag aadha tan, aur sab ek chhoti jagah par. Jab tak slab dekhne wala structural engineer jagah na bata de, wahan paani na bharein.
       *[place] Bina sahare wale kinare ke paas nahi. Bhari box kis beam ya deewar ke upar rahein, yeh wahi engineer bata sakta hai jo slab ko jaanta ho.
    } Baat team ko bhej di hai.
load-assumed = Aapka bed likha nahi hai: yeh { $bed } ke liye hai. Apna bataiye.
ask-load-size = Kitna bada hai? Box ki lambai, chaudai aur gehrai, ya bag ke litre bataiye.
choice-all-beds = saare bed
caution-hanging = uske neeche kisi ko na rehne dein, aur use kasne ya paani dene ke liye kinare se bahar na jhukein.
working-load-mix = { $mix }: paani dekar nitharne par { $wet } kilo prati litre, har chhed bhara ho to { $full } kilo prati litre.
working-load-parts = Mitti nithri hui { $mix }, paani se bhari { $full }; upar aur tray mein khada paani { $ponded }; dhancha, tray ya gamla { $vessel }; paudhe { $plants }.
working-load-ground = { $ground } par khada hai: { $load }, nithre se lekar band naali tak, 9.81 m/s² par.
working-load-depth = Ek square metre par: { $load }, nithre se lekar har chhed bharne tak, 9.81 m/s² par.
working-load-site = Bed { $beds }; do log { $people }; sabse bade bed ki boriyan, aane ke din, geeli { $sacks }.
working-load-judged = Dhanche, tray, paudhon aur logon ka wazan anumaan hai, koi source nahi; das mein nau baar isi had mein.
working-load-code = Building code ka chhat ya balcony ka aankda logon aur furniture ke liye hota hai: box uske upar aate hain, isliye usse tulna nahi ki gayi.

# (end of: Load)

## Space and seed

ask-space-crop = Kaun si fasal? Doori 5 cm se aadhe metre tak alag-alag hoti hai.
ask-seed-crop = Kis fasal ka beej, aur kitne bade bed ya tray ke liye?
space-plants =
    { $verdict ->
        [too-many] { $asked } zyada hain. { $bed }: { $one ->
            [one] { $crop } ka 1 paudha.
            [first] { $crop } ka 1 paudha, zyada se zyada { $plants }.
           *[more] { $crop } ke kareeb { $usual } paudhe (doori ke hisaab se { $plants }).
        }
        [tight] { $asked } tang rahenge. { $bed }: { $crop } ke kareeb { $usual } paudhe (doori ke hisaab se { $plants }).
       *[none] { $bed }: { $one ->
            [one] { $crop } ka 1 paudha
            [first] { $crop } ka 1 paudha (doori ke hisaab se { $plants })
           *[more] { $crop } ke kareeb { $usual } paudhe (doori ke hisaab se { $plants })
        }{ $share ->
            [shared] , bed barabar baantkar
           *[whole] {""}
        }.
    }
space-density = Yaani ek square metre mein kareeb { $metre }{ $few ->
    [few] {""}
   *[many] , ek square foot mein { $foot }
}.
space-bed = { $bed }
space-gap = { $crop }: paudhe se paudha { $cm } cm ({ $inches } inch){ $edge ->
    [rim] {""}
   *[edge] , kinare se { $half } cm
}.
space-between = { $one } aur { $other } ke beech: kareeb { $cm } cm.
space-litres = Har paudhe ko { $litres } mitti apni chahiye: garmi mein kam mitti do paani ke beech sookh jaati hai.
space-empty = Ginti khaali bed ki hai: jo abhi laga hai uski jagah ghata lein.
space-strewn = Ankur wali tray mein doori nahi: beej ek-sa failayein, paas-paas par ek ke upar ek nahi.
space-ground = { $area }
working-space-rows = Seedhi kataron mein lambai mein { $along }, chaudai mein { $across } = { $square }; har doosri katar aadhi doori khiskakar { $staggered }, { $cm } cm par.
working-space-round = Gol: gole ke bheetar gole ya tikoni jaali, jisme zyada aayein.
working-space-litres = Gamle ya bag mein jadein tay karti hain: har paudhe ko { $litres } (aam chalan, koi source nahi; chhape hue gamle ke naapon se milakar).
working-space-ground = Area bhaag doori ka varg; sankre bed mein kinare kuchh kam kar dete hain.
working-space-edge = Paudha kinare se aadhi doori par khada ho sakta hai. Sabse zyada se sabse kam doori tak: paudhon ki seema.
seed-grams =
    { $way ->
        [tray] { $place }: { $crop } ka kareeb { $about } beej ({ $grams }), ankur ke liye ghana failakar.
        [pieces] { $place }: { $crop } ke kareeb { $count } { $pieces } ({ $seeds }), har { $gap } cm par ek: khareedne ko { $about } ({ $grams }).
        [weight] { $place }: { $crop } ka kareeb { $about } beej ({ $grams }).
        [few] { $place }: { $crop } ke kareeb { $count } daane ({ $seeds }), 1 gram se kam.
       *[bed] { $place }: { $crop } ka kareeb { $about } beej ({ $grams }), koi { $count } daane.
    }
seed-how = Yeh har jagah daalkar baad mein ek paudha chhodne ka hisaab hai; khaali jagahon ke liye thoda zyada chalega.
seed-strewn-how = Thodi sookhi ret mein milakar patla bikherein, phir dheere-dheere chhaantein: chhaante paudhe khaye jaate hain.
seed-pieces-how = Jagahon se kuchh zyada, kyonki har tukda nahi lagta. Sabut, kade, swasth tukde lein; { $depth } cm gehre lagayein.
seed-tray-how = Beej ek parat mein, dher nahi.
seed-as-plants =
    { $by ->
        [weight] Paudhe bade karne hon to { $grams }.
       *[seeds] Paudhe bade karne hon, har jagah ek, to { $seeds } daane.
    }
seed-packet =
    { $enough ->
        [enough] { $packet } kaafi hai.
        [plants] Paudhon ke liye { $packet } kaafi hai, ankur ke liye kam padega.
        [short] { $packet } kam padega.
       *[about] { $packet } bas poora-poora hoga.
    }
seed-unknown = { $crops } ke beej ka jaancha hua wazan mere paas nahi hai; team se koi batayega.
seed-plants = { $count } paudhe
seed-range = { $low } se { $high } g
seed-row = { $length } ki katar
seed-beds = { $count } × { $bed }
working-seed-plants = { $cm } cm par { $plants } paudhe, har ek ke liye { $laid } beej, { $comes } % ugte hain.
working-seed-weight = 1000 beej ka wazan { $grams } gram.
working-seed-tray = Har square metre par { $grams } gram × { $area }.
mix-all-beds =
    { $count ->
        [1] ek bed
       *[other] { $count } bed milakar
    }
mix-blocks = { $material } dabi hui eenton mein aati hai: { $mass } phoolkar itni hoti hai, 5 kilo wali { $blocks }.
mix-top-up = { $bed }, { $sunk } phir se bharna: { $litres } khuli mitti.
build-round =
    { $bed }: { $cloth ->
        [none] na tray, na kinara, na astar; neeche paani nikalne ke chhed rakhein
       *[other] { $cloth } kapda, chaukor kata; tray ya kinara nahi
    }.
build-site = { $bed }: { $tray } wali { $trays } nikaasi tray, { $sides } kinara, { $cloth } kapda, { $wire } taar.
working-build-site = Ek-ek bed jodkar, aakhir mein ek baar poora kiya; tokri aur gol gamle mein kapda lagta hai, tray nahi; bag aur ankur tray mein kuchh nahi.

# (end of: Space and seed)

## Water: away, salts, what was seen

assumed-usual-rain = Baarish aam saal jaisi maani hai, 7 mein se kareeb { $days } din. Do din sookhe jaayein to sookhe hafte jaisa paani dein.
water-now =
    { $when ->
        [now] { $bed }: abhi paani dein, kareeb { $pour }; agli baari tak nahi chalega.
        [evening] { $bed }: abhi nahi, shaam tak ruk sakta hai. Shaam ko kareeb { $pour } dein.
        [tomorrow] { $bed }: aaj nahi, kal subah tak ruk sakta hai.
       *[later] { $bed }: abhi nahi, { $day } ki subah tak ruk sakta hai.
    }
water-now-since =
    { $how ->
        [told] Hisaab aapke bataye paani se, { $day }; tab se { $lost } sookha hai.
        [rain] Hisaab aapki batai baarish se, { $day }: usse bed bhar gaya, tab se { $lost } sookha hai.
       *[recorded] Pichhla paani { $day } ka likha hai; tab se { $lost } sookha hai.
    }
water-now-rain = { $bed }: abhi rehne dein, aaj { $rain } baarish ka andaza hai. Shaam tak na aaye to tab dein.
water-now-unknown = { $bed }: pichhla paani kab diya, likha nahi hai. Ungli daalkar dekhein; ek por neeche sookha ho to dein.
water-day-by-day = Din ke hisaab se: { $days }.
water-of-day = { $day } { $litres }
water-drip = Drip har baar: { $minutes } minute.
water-drip-unknown = Is bed ki drip ghante mein kitne litre deti hai, batayein; phir minute bata denge.
water-seed = Beej upar hi hain: baareek fuhaar se chhidkein ki beej bahe nahi, aur upar ki mitti kabhi sookhne na dein.
water-saplings = Pehle hafte har chhote paudhe ke chaaron taraf daalein, poore bed par nahi.
water-days =
    { $how ->
        [part] ek din se kam
        [up-to] zyada se zyada { $n } din
        [open] { $n } din ya zyada ({ $day } se pehle nahi)
       *[days] { $n } din
    }
water-away =
    { $from } se { $until } tak bahar, { $days } din: { $which ->
        [first] sabse pehle { $bed } mein paani kam padega, poora paani dene ke { $dry } baad.
       *[only] { $bed } mein paani kam padega, poora paani dene ke { $dry } baad.
    }
water-without =
    { $which ->
        [first] Poora paani dekar chhod dein to sabse pehle { $bed } mein kam padega, { $dry } mein.
       *[only] Poora paani dekar chhod dein to { $bed } mein paani { $dry } mein kam pad jayega.
    }
water-away-others = Uske baad: { $beds }.
water-away-other = { $bed } { $dry }
water-away-enough = Jaane ki subah poora paani dein to itne din chal jayega, agar mausam andaze jaisa rahe.
water-away-shelter = Mulch aur { $net } ki jaali ke neeche { $bed } shayad { $dry } chale; kam wale par bharosa karein.
water-away-saucers = Gamle aur tokriyan: saath mein chhaon mein, do ungli paani ki tray mein, ek-do din aur.
water-away-person = Pakka sirf wahi jo aakar paani de: { $turns }.
water-away-turn =
    { $bed } { $rhythm ->
        [weekly] { $turn } hafte mein ek baar
        [third] { $turn } har teesre din
        [second] { $turn } ek din chhodkar
        [daily] { $turn } roz
        [twice] { $turn } subah aur shaam
       *[thrice] { $turn } din mein teen baar
    }
water-not-summed = Yeh ismein nahi gine, kyunki naap, mix ya mausam pata nahi: { $beds }.
water-away-unknown = Yeh bed kitne din chalenge, kaha nahi ja sakta: naap ya mausam pata nahi.
caution-away = bina dekhe khula nal ya drip chhat par paani aur bojh bhar sakta hai; ghar par rehte do din aazmayein. Jo aapki jagah paani de woh kinare se door rahe.
water-flush =
    { $when ->
        [now] { $bed }: ab saade paani se dho dein, kareeb { $usual } ({ $litres }), teen baar mein dheere.
        [later] { $bed }: kareeb { $day } ko ya baad mein saade paani se dhoyein, kareeb { $usual } ({ $litres }), teen baar mein dheere.
       *[ahead] { $bed }: { $day } saade paani se dhoyein, kareeb { $usual } ({ $litres }), teen baar mein dheere.
    }
water-flush-reason = { $ec } dS/m ka paani apna namak bed mein chhodta hai, kyunki neeche kuchh bahta nahi; { $crop } ki had { $limit } dS/m hai. Tez baarish ho to der se.
water-flush-since-unknown = Pichhli baar kab dhoya, likha nahi hai; aaj se gina hai.
water-flush-not-soon = { $bed } ko agle chhah mahine dhone ki zaroorat nahi.
water-flush-too-salt = Yeh paani ({ $ec } dS/m) khud { $crop } ki had ({ $limit } dS/m) ke paas hai: dhone se kam faayda. Baarish ka ya meetha paani milayein.
water-flush-crop-unknown = { $bed } ki fasal kitna namak sehti hai, pata nahi.
water-flush-unknown = Yeh fasal kitna namak sehti hai, pata nahi, isliye din nahi bataya ja sakta. Baat team ko bhej di hai.
ask-water-salt = Aapka paani kitna khara hai, dS/m mein? Meter ya paani ki jaanch se pata chalta hai; team aapki chhat ke liye likh legi.
caution-flush = dhone se bojh badhta hai aur farsh geela hota hai: naali saaf rakhein, thoda thoda karke, sab bed ek din nahi.
working-learned =
    { $how ->
        [faster] { $looks } baar dekhne se: yeh bed hisaab se { $percent } tez sookhta hai (guna { $factor }, das mein nau baar).
        [slower] { $looks } baar dekhne se: yeh bed hisaab se { $percent } dheere sookhta hai (guna { $factor }, das mein nau baar).
       *[same] { $looks } baar dekhne se: yeh bed hisaab jaisa hi sookhta hai (guna { $factor }, das mein nau baar).
    }
working-salt = Namak: { $ec } dS/m ke paani ka { $part } neeche bah jaana chahiye, { $crop } ke liye (fao29: eq. 9, Rhoades 1974); { $crop } ki had { $limit } dS/m ({ $source }). Jitna paani diya utna namak joda; khaad ka namak nahi gina.

# (end of: Water: away, salts, what was seen)

## Bot

bot-hello-stranger = Main chhat par sabzi ke baag ke sawaalon ke jawab deta hoon: paani, buwai, mitti, keede. Team ke nyote ke bina sirf aam jawab milenge. Jo jaanna ho likhein.
bot-hello = Aap { $name } ({ $role }) ke naam se jude hain. Jo jaanna ho ya jo kaam kiya ho, likhein.
bot-role =
    { $role ->
        [owner] maalik
        [gardener] maali
       *[client] graahak
    }
bot-help = Jaise kisi insaan ko likhte hain waise likhein: "purab wale bed mein kitna paani", "paani de diya", "kyun". Jo mujhe nahi pata woh team ko bhejta hoon. "Mujhe bhool jayein" likhne se aapke baare mein rakhi baatein hat jaati hain.
bot-code-wrong = Yeh code nahi chalega: istemal ho chuka hai ya saat din se purana hai. Team se naya maangein.
bot-code-not-needed = Aap pehle se { $name } ke naam se jude hain. Code kharch nahi hua.
bot-invite-made = { $name } ({ $role }) ka code, ek baar aur saat din tak: { $code }
bot-invite-link = Woh { $link } kholein ya mujhe bhejein: /start { $code }
bot-invite-known = { $name } pehle se darj hain; code unhein unki chhaton ke saath jodega.
bot-invite-usage = Likhein: /invite gardener NAAM chhat chhat, ya /invite client NAAM chhat, ya /invite aur kisi darj vyakti ki id.
bot-site-unknown = "{ $site }" naam ki chhat nahi hai. Yeh hain: { $sites }
bot-came-in = { $name } ({ $role }) jud gaye hain.
bot-owner-only = Yeh sirf maalik kar sakte hain.
bot-crew-only = Yeh sirf team kar sakti hai.
bot-not-linked = Main aapko abhi nahi jaanta. Team se nyota maangein.
bot-command-unknown = Yeh command mujhe nahi pata. /help se dekhein kya-kya hai.
bot-too-many = Ek ghante mein itne hi jawab de sakta hoon. Baad mein likhein, ya team se nyota maangein.
bot-button-old = Yeh button ab nahi chalta. Jo chahiye likh dein.
bot-button-why = kyun
bot-button-yes = haan
bot-button-no = nahi
bot-left-alone = Kuchh nahi badla.
bot-place-which = Kaun si chhat yahan hai ({ $latitude }, { $longitude })?
bot-place-set = { $site } ki jagah ab { $latitude }, { $longitude } hai. Samudra se oonchai aur time zone wahi rahe.
bot-place-not-yours = Chhat ki jagah sirf maalik aur us chhat ke maali bata sakte hain.
bot-media-passed = Main tasveer nahi dekh sakta, awaaz nahi sun sakta. Team ko bhej diya hai.
bot-media-stranger = Main tasveer nahi dekh sakta, awaaz nahi sun sakta. Jo dikhta hai, likh dein.
bot-question = { $name } ka sawaal: { $text }
bot-question-media = { $name } ne yeh bheja hai. { $text }
bot-question-how = Is message ka reply karein, main aapki baat pahuncha doonga.
bot-a-stranger = Koi anjaan
bot-from-crew = Team ka jawab: { $text }
bot-passed-on = { $name } tak pahuncha diya.
bot-answered-by = { $who } ne { $name } ko jawab de diya: { $text }
bot-no-chat = { $name } ki mujhse koi chat nahi hai: aap hi unhein bata dein. Sawaal list se hat gaya.
bot-question-gone = Is sawaal ka jawab diya ja chuka hai, ya poochhne wale ab nahi hain.
bot-question-not-yours = Yeh sawaal maalik ya us chhat ke maali ke liye hai.
bot-questions-none = Kuchh baaki nahi hai.
bot-question-line = { $day }, { $name }: { $text }
bot-trouble = Is message par kaam nahi ho saka. Doosri tarah likhein, ya team se poochhein.
bot-person-unknown = "{ $person }" naam ka koi nahi hai. Yeh hain: { $people }
bot-person-removed = { $name } ko hata diya, unke baare mein rakhi sab baaton ke saath.
bot-person-line = { $id }: { $name } ({ $role }), { $linked ->
        [yes] jude hain
       *[no] jude nahi
    }
bot-language-set = Ab jawab romanised Hindi mein doonga.
bot-language-usage = Likhein /language en, /language hi ya /language hi-Latn.
bot-keep-title = Aapke baare mein main yeh rakhta hoon.
bot-keep-person = Naam: { $name }. Aap hain: { $role }. Id: { $id }.
bot-keep-sites = Chhatein: { $sites }.
bot-keep-language = Bhasha: { $language }.
bot-keep-chat = Is chat ka number, { $day } se juda, taaki aapko pehchaan sakoon.
bot-keep-conversation = Aapke pichhle message ka matlab, taaki agla samajh sakoon.
bot-keep-questions = Team ke paas baaki aapke sawaal: { $count }.
bot-keep-answers = Mere pichhle jawabon ke nishaan, taaki aap un par reply kar sakein: { $count }. 7 din baad hat jaate hain; team se poochhe sawaalon ke 30 din baad.
bot-keep-records = In chhaton par hue kaam aur dekhi baatein: { $count }. Woh chhat ki hain, unmein aapka naam nahi.
bot-keep-how = /export se file milti hai. /forget se sab hat jaata hai.
bot-forget-ask = Kya aapko bhool jaoon? Aapka naam, yeh chat, baatcheet aur baaki sawaal hat jayenge. Chhat par hua kaam chhat ke saath rahega, aapke naam ke bina. Backup mein saat din tak rehta hai.
bot-forgotten = Ho gaya. Ab main aapko nahi jaanta. Backup mein saat din tak rehta hai.
bot-menu-help = main kya kar sakta hoon
bot-menu-me = aapke baare mein kya rakha hai
bot-menu-export = meri jaankari file mein
bot-menu-forget = mujhe bhool jayein
bot-menu-language = bhasha chunein
bot-menu-questions = team ke liye baaki sawaal
bot-menu-invite = kisi ko nyota dein
bot-menu-people = kaun-kaun darj hai
bot-menu-remove = kisi ko hatayein
# Bina command ke log jo likhte hain, khadi lakeer se alag.
bot-words-me = mere baare mein kya rakha hai | mere baare mein kya jaante hain | meri jaankari dikhayein | meri jaankari dikhao | mere bare me kya likha hai
bot-words-export = meri jaankari bhejein | meri jaankari file mein bhejein
bot-words-forget = mujhe bhool jayein | mujhe bhool jao | meri jaankari hata dein | meri jaankari mita dein | meri jaankari hata do | meri jaankari mita do | mera sab kuch hata do
bot-words-help = madad | aap kya kar sakte ho | aap kya kar sakte hain | tum kya kar sakte ho | kya kya kar sakte ho | kya poochh sakte hain | kya puchu | ye kaise chalta hai | yeh kaise chalta hai

# (end of: Bot)

## Trouble

trouble-what-seen = Us par kya dikh raha hai?
trouble-which-sign = Yeh { $first } ya { $second } ho sakta hai. Inmein se aur kya dikh raha hai?
trouble-likely = Sabse zyada lagta hai: { $trouble }.
trouble-either = Sabse zyada lagta hai { $first }; { $second } bhi ho sakta hai.
trouble-tell-apart = Pakka karne ke liye: inmein se aur kya dikh raha hai?
trouble-steps = { $text }
trouble-remedy = { $material }: { $text }
trouble-watch = Yeh dekhte rahein: { $text }
trouble-pull = Kab ukhadein: { $text }
trouble-call = Humein kab bulayein: { $text }
choice-sign = { $sign }
choice-none-of-these = inmein se koi nahi
working-signs-seen = Dikha: { $signs }.
working-signs-not-seen = Poochha, par nahi dikha: { $signs }.
working-cause = { $trouble }, sau mein { $percent }: { $signs }
working-causes = Har pareshani mein kaun sa nishaan kitni baar dikhta hai, fasal, mausam aur kiye gaye kaam se taula; yeh wazan hamara andaza hain, gine hue mamle nahi.

## What is due

due-job =
    { $day ->
        [today] Aaj
       *[other] { $day }
    }: { $job ->
        [spray] spray
        [feed] khaad
        [pick] tudai
        [sow] phir buai
        [net] jaali lagayein
        [net-down] jaali hatayein
       *[other] { $job }
    }{ $crop ->
        [none] {""}
       *[other] {" "}{ $crop }
    }, { $beds }.
due-none = In saat dinon mein paani ke siva kuchh baaki nahi.
due-none-day = { $day } ko paani ke siva kuchh baaki nahi.
due-beds-more = { $count } bed
due-more = aur { $count } kaam.
working-due-moved = { $bed }: { $by ->
    [rain] baarish
    [picking] tudai
    [wind] hawa
   *[heat] garmi
} se { $day } par khiska.
working-due-since = { $bed }: { $job ->
    [spray] spray
    [feed] khaad
    [pick] tudai
    [net] jaali
    [net-down] jaali
   *[other] { $job }
} apne kram se { $day } ko hona tha.
working-due = Spray har hafte, khaad har 7 se 10 din ya fasal jaisa chahe, pehli tudai jama hui garmi se, jaali hafton ki garmi se; paani ka apna kram hai.

shoots-refused = { $crop } nahi: ise ankur ke liye na ugayein aur aise na khayein.
shoots-instead = Iski jagah yeh ankur achhe hain: sarson, mooli, methi, dhaniya.

recorded-bed = Naya bed note kiya: { $name }, { $size }.
recorded-bed-depth = Gehrai aapne nahi batayi: maine { $size } maani.
recorded-bed-rest = Jab tak aap kuchh aur na batayein, ise house mix, { $sun } ghante dhoop, baarish mein khula aur bina jaali ka maanunga.
record-corrected = Pehle jo note kiya tha, woh hata diya.
ask-which-site = Kis jagah par?
choice-site = { $site }

## Someone is hurt

emergency-first =
    { $what ->
        [swallowed] Turant doctor ya aspataal jayein, bottle, beej ya patta saath le jayein. Ulti na karayein; munh paani se kulla karayein.
        [breathed] Turant spray se door khuli hawa mein le jayein aur bithayein; bheege kapde utaarein, chamdi sabun aur behte paani se dhoyein. Bottle ya uska label lekar turant doctor ya aspataal jayein; saans lene mein takleef ho to turant ambulance bulayein.
        [skin] Bheege kapde utaarein, sookha powder jhaad dein, aur chamdi ko 20 minute khoob behte paani se dhoyein, tel ya spray ho to sabun se bhi. Phir bottle ya uska label lekar doctor ko dikhayein, jalan ho ya tabiyat bigde to turant.
        [eye] Aankh ko turant saaf behte paani se 15 minute dhoyein, palkein khuli rakhein; phir doctor ko dikhayein.
        [bite] Turant aspataal jayein. Hilein-dulein nahi, ghaav ko kaatein, choosein ya baandhein nahi; kutte ya bandar ka kaata pehle sabun aur behte paani se 15 minute dhoyein.
        [heat] Turant chhaya mein litayein, shareer geela karein, pankha karein, hosh mein hon to ghoont-ghoont paani dein. Behki baatein ya behoshi ho to turant ambulance bulayein.
        [shock] Us vyakti ya pump ko chhoone se pehle main se bijli band karein; phir ambulance bulayein. Jise bhi jhatka laga ho woh doctor ko dikhaye.
        [cut] Saaf kapde se dabakar rakhein jab tak khoon na ruke, phir sabun aur behte paani se dhoyein. Tetanus ke liye, aur kuch andar reh gaya ho to, aaj hi doctor ko dikhayein; khoon na ruke to turant jayein.
        [burn] Jale ko 20 minute behte paani mein thanda karein, angoothi aur bheega kapda utaar dein. Sookha choona pehle jhaad dein. Koi lep ya barf nahi; phir doctor ko dikhayein, chehra, haath, bada ghaav ya choona ho to turant.
        [blow] Chot wala hissa hilayein nahi, angoothi utaar dein, kapde mein lipti thandi cheez rakhein. Aaj hi doctor ko dikhayein. Tedha ya sunn ho, us par khade na ho sakein, ya sir, gardan, peeth par lagi ho: vyakti ko hilayein nahi, turant ambulance bulayein.
        [choked] Khaans sakein to khaansne dein. Saans na aaye ya bol na sakein: aage jhukakar peeth par kandhon ke beech hatheli se paanch baar zor se maarein (ek saal se chhote bachche ko baanh par aundha litakar); turant ambulance bulayein. Naak ya kaan mein daana ho to kuredein nahi; aaj hi doctor nikalega.
       *[fall] Turant ambulance bulayein. Oonchai se gire vyakti ko na hilayein, na bithayein; sir sthir aur shareer garam rakhein.
    }
emergency-help = Bharat mein aapaat number 112 hai. Team ko bhi bata diya hai; unka intezaar na karein.
caution-emergency = Yeh sirf pehli madad hai; aage doctor batayenge.
spray-not-on-bees = Nahi: phoolon par madhumakkhi ho tab nahi. Shaam dhale jab woh laut jayein tab karein, phoolon ko bachakar.
spray-not-at-noon = Nahi: din ki garmi ya dhoop mein nahi, patte jal jaate hain. Subah-subah ya sooraj dhalte samay karein, 32 °C se neeche.
record-undone = Wapas liya: jo note kiya tha, hat gaya.
record-which-day = Aisi koi tareekh nahi hai. Kaun sa din tha?
new-bed-odd-size = Yeh to kamre se bhi bada hoga. Lambai, chaudai aur gehrai phir se batayein, foot, inch ya cm mein.

harvest-supposed =
    { $when ->
        [today] { $crop } aaj { $how ->
            [planted] ropein
           *[sown] boyein
        } to pehli tudai { $day }, kareeb { $days } din mein.
       *[later] { $crop }: abhi iska samay nahi hai. Samay aane par, { $start } ke aas-paas, { $how ->
            [planted] ropein
           *[sown] boyein
        } to pehli tudai { $day }, kareeb { $days } din mein.
    }
## Fasal ko kya chahiye, aur kya-kya hai
wants-depth =
    { $verdict ->
        [enough] { $crop }: { $offered } gehrai kaafi hai; kareeb { $needs } mix chahiye.
        [just] { $crop }: { $offered } mein bas kaam chal jayega; { $needs } mix behtar hai.
        [short] { $crop }: { $offered } kam hai; { $needs } mix chahiye.
       *[unsaid] { $crop }: kareeb { $needs } gehra mix chahiye, yaani dabba ya gamla usse do ungal zyada gehra.
    }
wants-gap = Ek paudha kareeb { $gap } jagah leta hai: itne chaude gamle mein ek, chaude dabbe mein zyada.
wants-sowing-depth =
    { $as ->
        [pieces] { $crop }: { $pieces } { $cm } cm gehre lagayein.
       *[seed] { $crop }: beej ke upar { $cm } cm baareek mix rakhein.
    }
wants-sun =
    { $verdict ->
        [enough] { $crop }: { $offered } ghante seedhi dhoop kaafi hai; kareeb { $needs } ghante chahiye.
        [just] { $crop }: { $offered } ghante seedhi dhoop mein bas kaam chal jayega; { $needs } ghante behtar hai.
        [short] { $crop }: { $offered } ghante seedhi dhoop kam hai; kareeb { $needs } ghante chahiye.
       *[unsaid] { $crop }: din mein kareeb { $needs } ghante seedhi dhoop chahiye.
    }
wants-tray = { $crop } ke ankur: 3 se 5 cm tray mix aur khuli chhaya kaafi hai.
working-depth = Mix ki gehrai: { $needs } ({ $source }).
working-sun = Seedhi dhoop: { $needs } ghante ({ $source }).
bed-stands = { $bed }, { $size }: { $crops }.
bed-empty = { $bed }, { $size }: ismein kuchh darj nahi hai.
bed-planting =
    { $crop }, { $how ->
        [planted] { $day } ko ropa
       *[sown] { $day } ko boya
    }
beds-more = Aur { $count }.
# --- What was done last; messages about the conversation itself ---
last-done =
    { $bed }: pichhli baar { $job ->
        [water] paani
        [spray] spray
        [feed] khaad
        [pick] tudai
       *[other] kaam
    } { $day } ko{ $amount ->
        [none] {""}
       *[other] , { $amount }
    }.
last-none =
    { $bed }: { $job ->
        [water] paani
        [spray] spray
        [feed] khaad
        [pick] tudai
       *[other] kaam
    } ka yahan kuchh darj nahi hai.
last-who = Kisne kiya, yeh yahan nahi rakha jaata.
speaks-set = Ab se roman Hindi mein. Kya jaanna chahenge?
## The weather of this week: who foretold it, how old it is, what is known of the days gone by
weather-old = Mere paas jo sabse naya forecast hai woh { $days } din purana hai, { $day } ka: aasmaan bhi dekh lein.
assumed-usual-days-part = 7 mein se { $days } din ka forecast nahi hai: wahan { $place } ke is mausam ke aam din maane hain.
working-forecast-by = Forecast ka source: { $service ->
        [met-norway] MET Norway, Locationforecast 2.0
       *[open-meteo] Open-Meteo
    }, licence CC BY 4.0, { $day } ka bana, { $until } tak.
working-forecast-ended = Pichhla forecast { $until } tak ka hi tha; uski jagah aam din maane hain.
working-days-gone = Pichhle { $days } dinon mein: { $observed } jaise sach mein rahe, { $kept } jaisa unke aakhri forecast ne kaha, { $told } jaisa logon ne bataya, baaki aam din.
## The year ahead
year-head =
    { $of ->
        [site] { $site } ka aane wala saal, bed ki dhoop aur gehrai ke hisaab se.
        [sites] Aapki chhaton ka aane wala saal, bed ki dhoop aur gehrai ke hisaab se.
        [beds] { $beds } ka aane wala saal, dhoop aur gehrai ke hisaab se.
       *[place] { $place } mein aane wala saal, aise bed ke liye jinmein dhoop aur gehrai poori ho.
    }
year-month = { $month }: { $sow }{ $net_up }{ $net_down }{ $halved }{ $full }{ $drains }{ $water }
year-sow =
    { $what ->
        [begins] shuru karein { $begins }.{ $more }
        [both] shuru karein { $begins }; aakhri mahina { $ends } ka.{ $more }
        [ends] aakhri mahina { $ends } ka.{ $more }
        [goes-on] naya kuch nahi; { $count } faslon ka samay abhi hai.
       *[nothing] kuch nahi lagta.
    }
year-goes-on = {" "}{ $count } aur ka samay abhi hai.
year-more = { $count } aur
year-net-up =
    {" "}{ $when ->
        [now] Jaali abhi lagi honi chahiye.
       *[later] Jaali lagbhag { $day } ko lagayein.
    }
year-net-down = {" "}Jaali lagbhag { $day } ko utaarein.
year-feed-halved =
    {" "}{ $when ->
        [now] Abhi khaad aadhi ({ $limit } aur upar ke din).
       *[later] Khaad lagbhag { $day } se aadhi ({ $limit } aur upar ke din).
    }
year-feed-full = {" "}Lagbhag { $day } se phir poori khaad.
year-drains = {" "}Pehli badi baarish se pehle naali aur nikaas saaf karein.
year-water =
    {" "}{ $rhythm ->
        [none] Paani baarish de deti hai.
        [weekly] Paani hafte mein ek baar.
        [third] Paani har teesre din.
        [second] Paani ek din chhodkar.
        [daily] Paani din mein ek baar.
        [twice] Paani subah aur shaam.
       *[thrice] Paani din mein teen baar.
    }
year-always = Poore saal: { $crops }.
year-trays = Ankur tray par poore saal, chhaya mein: { $crops }.
year-seedbed = Pehle paudh taiyar karein, 25 se 35 din baad ropein: { $crops }.
year-pieces = Beej se nahi: { $crops }.
year-pieces-of = { $crop } ({ $pieces })
year-water-of = Paani { $bed } ka hai jab woh poora bhara ho; jahan badalta hai wahin likha hai; aakhri baat mitti mein daali ungli ki.
year-net-rule = Jaali un hafton ki hai jab din { $above } se upar hon; naram patton ko pehle chahiye, bhindi aur chaulai ko baad mein.
year-usual = Sab aam mausam se: saal do hafte aage-peeche ho sakta hai. Theek din jaanne hon to ek fasal poochein.
working-year = Har fasal: woh hafte jinmein bone par woh garmi, thand ya lambe dinon se pehle tudai tak pahunchti hai. Jaali: 35 °C se upar ke hafte (aam chalan). Khaad: 40 °C aur upar ke hafton mein aadhi (anumaan). Naali: 100 mm baarish ka pehla mahina (anumaan). Paani: har mahine ke beech ka bed ka hisaab.
## Alerts
alert-days =
    { $span ->
        [one] { $from } ko
       *[more] { $from } se { $until } tak
    }
alert-heat =
    { $grade ->
        [one] Loo
       *[two] Tez loo
    } { $days }: { $tmax } tak, aam taur par { $usual } rehta hai.
alert-water = Kal se: { $beds }.
alert-water-all = Kal se { $count } bed ko milakar din mein lagbhag { $day } paani chahiye; ek ka naam lekar poochein.
alert-heat-do = Pehle hi jaali lagayein; spray nahi, tez khaad nahi; bed par dhoop aane se pehle paani dein, gamle saath-saath chhaya mein.
alert-rain =
    { $grade ->
        [one] Bhaari baarish
        [two] Bahut bhaari baarish
       *[three] Behad bhaari baarish
    } { $days }: ek din mein { $mm } mm tak.
alert-rain-do = Pehle hi: naali aur nikaas saaf, tashtariyan khaali, paka hua tod lein; us din paani, spray ya khaad nahi, aur baadal garjein to chhat se utar aayein. Chhat par paani khada ho ya tapke to humein batayein.
alert-wind =
    { $grade ->
        [one] Tez hawa, badi daaliyan hilengi,
       *[two] Bahut tez hawa, poore ped hilenge,
    } { $days }.
alert-wind-do = Hawa shaant rehte hi: jaali lapetkar neeche, oonche paudhe neeche baandhein, gamle, dibbe aur khule patte deewar se neeche aur kinare se door.
alert-cold =
    { $grade ->
        [one] Thandi raat
       *[two] Bahut thandi raat
    } { $days }: { $tmin } tak. { $crops } ({ $beds }) ke liye yeh zyada thand hai.
alert-cold-do = Shaam ko kapde ya taat se dhakein, subah dhoop mein hata dein; chhote gamle deewar se sataakar; paani sirf subah dein.
alert-walls = 38 °C aur upar ke din { $days }: patli deewar par dhoop jadein garam karti hai ({ $beds }). Pashchim ki taraf geela taat ya patta lagayein, gamle satayein, farsh se uthayein, mulch bichhayein.
alert-bolting =
    { $crop } ({ $beds }): { $by ->
        [heat] is hafte din { $tmax } ke hain, yeh { $limit } tak sehti hai
       *[day] din ab { $limit } ghante se lambe hain
    }, isliye phool par aa jayegi. Abhi poori kaat lein ya zyada todein.
alert-rains = Baarish aam taur par { $month } mein shuru hoti hai: naali aur nikaas abhi saaf karein, aur dekhein ki har bed neeche se paani chhode.
alert-none = { $day } tak kuch khaas nahi dikhta: na loo, na bhaari baarish, na tez hawa, na aisi thandi raat jo khadi fasal na sahe.
alert-no-forecast = Aapki chhat ka forecast abhi mere paas nahi hai, isliye kisi ek din ki chetavni nahi de sakta.
caution-heat-work = sabse garam ghante mein chhaya mein bhi { $felt } jaisa lagta hai, dhoop mein 8 °C tak aur: chhat par sirf nau se pehle aur paanch ke baad, akele kabhi nahi, har 20 minute mein paani piyein. Chakkar, ghabrahat ya paseena band ho: chhaya mein jayein, tvacha geeli karein, 112 par phone karein.
caution-wind-edge = hawa mein kinare par kabhi na jayein, aur udi cheez ke peeche kabhi nahi.
## The weather as it was told
sky-told =
    { $span ->
        [one] Hisaab mein { $from } ke liye aapka bataya mausam hai: { $what }.
       *[more] Hisaab mein { $from } se { $until } tak aapka bataya mausam hai: { $what }.
    }
sky-both = din mein { $tmax }, raat mein { $tmin }
sky-day = din mein { $tmax }
sky-night = raat mein { $tmin }
sky-rain = { $mm } mm baarish
sky-dry = baarish nahi
sky-rain-guessed = Millimetre nahi bataye, isliye { $mm } mm maane; bahar rakha seedhi deewar ka gilaas naap deta hai.
working-days-told = 7 mein se { $days } din ka mausam waisa maana hai jaisa yahan ke logon ne bataya.
## Pictures and pages
draw-from-until = { $from } se { $until } tak
draw-a-day =
    { $unit ->
        [ml] Har din ke millilitre
       *[L] Har din ke litre
    }
draw-weekday =
    { $day ->
        [mon] Som
        [tue] Mangal
        [wed] Budh
        [thu] Guru
        [fri] Shukra
        [sat] Shani
       *[sun] Ravi
    }
draw-turn =
    { $turn ->
        [morning] Subah
        [noon] Dopahar
       *[evening] Shaam
    }
draw-whisker = Har khambhe par khadi lakeer: kam se kam aur zyada se zyada itna lag sakta hai.
draw-usual-days = Dhaaridar: wahan tak poorvanuman nahi hai, aam din maana hai.
draw-gap = Danthal se danthal { $gap }
draw-room = Ek paudhe ko { $room } chaudi jagah chahiye
draw-rows = Lambai mein { $along }, chaudai mein { $across }
draw-to-scale = Upar se, naap ke anupaat mein. Bindu: danthal. Ghera: ek paudhe ki jagah.
draw-month =
    { $month ->
        [jan] Jan
        [feb] Feb
        [mar] March
        [apr] April
        [may] May
        [jun] June
        [jul] July
        [aug] Aug
        [sep] Sep
        [oct] Oct
        [nov] Nov
       *[dec] Dec
    }
draw-today = aaj
draw-year-waterings = Hafte mein kitni baar paani
draw-year-kind =
    { $kind ->
        [goes-in] Laga sakte hain
        [picking] Tudai
        [net] Upar jaali
        [feed-less] Khaad aadhi dein
       *[rains] Baarish: paani ki nikaasi khuli rakhein
    }
draw-card-title = Nal ke paas taangne ka card
draw-card-valid = { $from } se { $until } tak
draw-card-none = Is hafte paani nahi
draw-card-finger = Baarish ke baad bhi pehle ungli daalkar dekhein.
draw-card-edge = Chhat ke kinare se door rahein. Kinare ke paas akele kaam na karein.
draw-label-scan = Scan karke is bed ka poochhein ya batayein.
draw-round-title = Chakkar
draw-round-none = Paani ke siva kuchh baaki nahi.
draw-due-since = { $day } se baaki
draw-calendar-name = Chhat ke kaam
draw-job =
    { $job ->
        [spray] Spray
        [feed] Khaad
        [pick] Tudai
        [sow] Phir buai
        [net] Jaali lagayein
        [net-down] Jaali hatayein
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
card-due = Baaki: { $jobs }.
card-noted = Aaj likha: { $what }.
job-due = { $what ->
        [none] {""}
       *[other] { $what }:{" "}
    }{ $job ->
        [water] paani
        [spray] spray
        [feed] khaad
        [flush] saade paani se dhona
        [sow] phir buai
        [plant] paudh lagana
        [thin] ghane paudhe nikaalna
        [weed] nirai
        [prune] kaat-chhaant
        [stake] sahara lagana
        [pick] tudai
        [pull] ukhaadna
        [net] jaali lagana
        [net-down] jaali hatana
        [mix] nayi mitti
        [top-up] upar se mitti
        [clear] khaali karna
        [mulch] mulch bichhana
        [mend] marammat
       *[check] dekhna
    }
job-done = { $what ->
        [none] {""}
       *[other] { $what }:{" "}
    }{ $job ->
        [water] paani diya
        [spray] spray kiya
        [feed] khaad di
        [flush] saade paani se dhoya
        [sow] beej boye
        [plant] paudh lagayi
        [thin] ghane paudhe nikaale
        [weed] nirai ki
        [prune] kaat-chhaant ki
        [stake] sahara lagaya
        [pick] tudai ki
        [pull] paudhe ukhaade
        [net] jaali lagayi
        [net-down] jaali hatayi
        [mix] nayi mitti daali
        [top-up] upar se mitti bhari
        [clear] khaali kiya
        [mulch] mulch bichhayi
        [mend] marammat ki
       *[check] dekh liya
    }{ $amount ->
        [none] {""}
       *[other] {", "}{ $amount }
    }
bed-looked =
    { $what ->
        [still-wet] ab bhi geela
        [dry-early] samay se pehle sookha
       *[ran-through] paani seedha neeche nikla
    }
card-button-did =
    { $job ->
        [water] paani diya
        [spray] spray kiya
        [feed] khaad di
        [flush] saade paani se dhoya
        [sow] beej boye
        [plant] paudh lagayi
        [thin] ghane paudhe nikaale
        [weed] nirai ki
        [prune] kaat-chhaant ki
        [stake] sahara lagaya
        [pick] tudai ki
        [pull] paudhe ukhaade
        [net] jaali lagayi
        [net-down] jaali hatayi
        [mix] nayi mitti daali
        [top-up] upar se mitti bhari
        [clear] khaali kiya
        [mulch] mulch bichhayi
        [mend] marammat ki
       *[check] dekh liya
    }
card-button-saw =
    { $what ->
        [still-wet] ab bhi geela
        [dry-early] samay se pehle sookha
       *[ran-through] paani seedha neeche nikla
    }
card-button-all = sab ho gaya
card-button-picked = tudai ki
card-button-take-back = wapas lein
card-button-back = peechhe
card-button-type = likhkar batayein
card-button-unweighed = taula nahi
card-which-crop = Kya toda?
card-how-much = { $crop }: kitna toda?
card-type-weight = Wazan likhein, jaise 350 g ya 1.2 kg.
card-odd-weight = Yeh theek nahi lagta. Wazan phir likhein, jaise 350 g ya 1.2 kg.
value = { $value }
crew-not-yours = Woh bed aapki dekhbhaal mein nahi hai.
round-line = Round, bed { $n }, kul { $all }.
round-title = { $day } ka round: { $sites } chhat, { $beds } bed, seedhe raste kareeb { $km } km.
round-stop = { $n }. { $site }: { $jobs ->
        [0] paani
       *[other] { $jobs } kaam aur paani
    }.
round-nothing = Abhi aapki koi aisi chhat nahi jis par bed hon.
round-button-begin = shuru karein
round-button-from-here = jahan main hoon wahan se
round-button-as-given = meri list ke kram se
round-button-anew = phir se shuru karein
round-button-skip = abhi chhodein
round-button-next = agla bed
round-button-others = doosra bed
round-button-leave = yeh chhat chhodein
round-button-end = round khatam
round-ask-start = Aap jahan hain woh location bhejein (paper clip, phir location). Round wahin se shuru hoga.
round-where-to = Kahan chalein?
round-over = Round poora hua: { $sites } chhat, { $beds } bed.
round-over-already = Aaj ka round poora ho chuka hai.
round-left-out = Chhoote: { $beds }.
note-title = { $day } ko { $who } { $site } par aaye the.
note-done = Kiya: { $what }.
note-found = Mila: { $what }.
note-of-beds = { $what } ({ $beds })
note-until = Agli baar aane tak aap:
note-wait = { $bed }: { $day } se pehle kuchh na todein, spray hua hai.
note-wait-label = { $bed } par spray hua hai: label par likhe din poore hone tak kuchh na todein.
note-next = Hum kareeb { $day } ko phir aayenge.
note-offer = Yeh { $name } ko jayega:
note-button-send = bhejein
note-button-change = badlein
note-button-drop = na bhejein
note-dropped = Note nahi bheja.
note-type = Iski jagah jo jaana hai, likhein.
note-gone = Yeh note bheja ja chuka hai, ya ab nahi hai.
note-sent = Note { $name } ko chala gaya.
note-no-chat = { $name } ki mujhse koi chat nahi hai: aap hi bata dein. { $text }
visits-title = { $from } se { $until } tak ke daure.
visits-site = { $site }: { $visits }.
visits-made = { $day } { $who } ({ $count } baatein likhi)
visits-due = { $became ->
        [missed] { $day } se chhoota
       *[open] { $day } se baaki
    }: { $jobs }
visits-none = na koi hua, na chhoota
visits-the-crew = team
label-opens-nothing = Yeh label aapke liye kuchh nahi kholta. Jo jaanna ho likhein.
label-new = { $bed } ka purana label ab kuchh nahi kholta. Naya link: { $link }
label-usage = Bed ke link ke liye /codes aur chhat ki id likhein; purana label bekaar karne ke liye /newcode CHHAT/BED. Chhatein: { $sites }
draft-bed = Samjha: { $site } par naya { $kind ->
        [basket] tokra
        [tray] tray
        [pot] gamla
        [bag] bag
       *[box] box
    }, naam "{ $name }": { $size }.
draft-bed-sun =
    { $how ->
        [told] Saaf din mein seedhi dhoop: { $hours } ghante.
        [walls] Iski dhoop wahan ki deewaron se nikaali jayegi.
       *[usual] Dhoop aapne nahi batayi: { $hours } ghante maanta hoon.
    }
draft-bed-rest = Jab tak aap aur na kahein: house mix, baarish mein khula, bina jaali.
new-bed-not-yours = Woh jagah aapki dekhbhaal mein nahi hai, isliye kuchh nahi likha.
bot-button-picture = chitra
bot-no-picture = Is jawab ka koi chitra nahi hai.
place-button-new = yahan nayi chhat hai
place-button-round = round yahan se shuru
bot-keep-visits = Jin dinon aapne kisi chhat par kaam kiya ya daure ka note paaya: { $count }. 120 din baad hat jaate hain.
menu-note = aaj ke graahakon ko note
note-none = Aaj ka aapka aisa koi kaam nahi jo graahak ko na bataya ho.
crew-help = /round aaj ki chhaton par bed-bed le chalta hai. "Nayi site: NAAM" se chhat judti hai, "NAAM ke yahan naya box, 4 by 3 ft, ek foot gehra, dhoop do baje tak" se bed. /note aaj ke graahakon ko likhta hai. /codes bed ke labelon ke link deta hai.
draft-right = Theek hai?
draft-bed-again = Nahi rakha. Maap ke saath phir likhein: "Meera ke yahan naya box, 4 by 3 ft, ek foot gehra, dhoop do baje tak".
draft-bed-kept = Rakh liya: { $bed } ({ $id }).
draft-button-change = badlein
site-ask-name = Nayi jagah ka naam kya hai?
site-ask-place = { $name } kahan hai? Uski location bhejein (paper clip, phir location), ya sheher likhein.
site-understood = Samjha: nayi jagah "{ $name }", { $latitude }, { $longitude }, { $how ->
        [city] { $near } ke beech mein
        [far] { $near } se { $km } km, jo meri jaani sabse paas ki jagah hai
       *[near] { $near } ke paas
    }. Samudra se oonchai { $height } m aur time zone { $zone }, wahin jaisa. Theek hai?
site-kept = Rakh liya: { $name }. Iski id { $id } hai. Ab iske bed batayein: "new box at { $name }, 4 by 3 ft, a foot deep".
site-added = { $who } ne nayi jagah jodi: { $name } ({ $id }).
menu-round = aaj ka round
menu-visits = hue aur chhoote daure
menu-newsite = nayi chhat jodein
menu-codes = labelon ke link
menu-newcode = purana label bekaar karein
crew-words-round = round | aaj ka round | round shuru karein
crew-words-round-of = round:
crew-words-visits = daure | is hafte ke daure | daure dikhayein
crew-words-new-site = nayi site | naya site
crew-words-new-place = nayi jagah | nayi chhat | naya terrace | nayi terrace | nayi balcony
## Reminders, and jobs moved to another day
reminder-title =
    { $word ->
        [morning] Aaj, { $day }:
       *[eve] Kal, { $day }:
    }
reminder-job =
    { $number }. { $crop ->
        [none] {""}
       *[other] { $crop } ki{" "}
    }{ $job ->
        [spray] spray
        [feed] khaad
        [pick] tudai
        [sow] phir buai
        [net] jaali lagayein
        [net-down] jaali hatayein
       *[other] { $job }
    }: { $beds }{ $part ->
        [evening] ; shaam { $from } se { $until } tak
        [dawn] ; sooraj nikalne se pehle, { $from } se { $until } tak
       *[none] {""}
    }{ $since ->
        [none] {""}
       *[other] {" "}({ $since } se baaki)
    }.
reminder-moved =
    { $number }. { $word ->
        [morning] Aaj
       *[eve] Kal
    } nahi: { $crop ->
        [none] {""}
       *[other] { $crop } ki{" "}
    }{ $job ->
        [spray] spray
        [feed] khaad
        [pick] tudai
        [sow] phir buai
        [net] jaali lagana
        [net-down] jaali hatana
       *[other] { $job }
    }, { $beds }. Ab { $day } ko: { $by }.
reminder-mover =
    { $who ->
        [you] din aapne badla
        [someone] kisi ne din badla
       *[other] { $who } ne din badla
    }
reminder-water =
    { $number }. Kal se paani { $rhythm ->
        [none] na dein, baarish kaafi hai
        [weekly] hafte mein ek baar dein
        [third] har teesre din subah dein
        [second] ek din chhodkar subah dein
        [daily] roz subah dein
        [twice] roz subah aur shaam dein
       *[thrice] roz teen baar dein
    } (ab tak { $before ->
        [none] paani nahi
        [weekly] hafte mein ek baar
        [third] har teesre din subah
        [second] ek din chhodkar subah
        [daily] roz subah
        [twice] roz subah aur shaam
       *[thrice] roz teen baar
    }): { $beds }{ $turn ->
        [none] {""}
       *[other] , ek baar mein kareeb { $turn }
    }.
reminder-button-done =
    { $number ->
        [none] ho gaya
       *[other] { $number } ho gaya
    }
reminder-button-move =
    { $number ->
        [none] din badlein
       *[other] { $number } din badlein
    }
reminder-button-why =
    { $number ->
        [none] kyun
       *[other] { $number } kyun
    }
reminder-button-undo = wapas lein
reminder-button-leave = rehne dein
reminder-move-tomorrow = kal, { $day }
reminder-move-days = { $count } din baad, { $day }
reminder-move-ask = Iski jagah kis din? Likhkar bhi bata sakte hain: "spray shukravar ko karenge".
reminder-done-already = Yeh pehle hi ho gaya likha hai.
reminder-taken-back = Wapas liya: jo note kiya tha, hat gaya.
bot-keep-reminders = Har kaam ke baare mein aapko pichhli baar kya bataya, taaki ek hi baar yaad dilaun: { $count }.
moved-by =
    { $who ->
        [you] Din aapne badla: { $day }.
        [someone] Din badla gaya: { $day }.
       *[other] Din { $who } ne badla: { $day }.
    }
working-moved-by =
    { $who ->
        [you] { $bed }: din aapne badla: { $day }.
        [someone] { $bed }: din badla gaya: { $day }.
       *[other] { $bed }: din { $who } ne badla: { $day }.
    }
moved-to =
    Din badla: { $job ->
        [spray] spray
        [feed] khaad
        [pick] tudai
        [sow] buai
        [net] jaali lagana
        [net-down] jaali hatana
       *[other] { $job }
    }, { $beds }, ab { $day } ko.
moved-but = { $bed }: us din theek nahi rahega, isliye { $day } ko ({ $by }).
move-which-day = Kis din karein?
move-not-then = Woh din nikal gaya ya bahut door hai. Kis din karein?
move-none =
    Agle { $days } dinon mein { $job ->
        [spray] koi spray
        [feed] koi khaad
        [pick] koi tudai
        [sow] koi buai
       *[net] jaali ka koi kaam
    } baaki nahi, isliye badalne ko kuchh nahi.
choice-day = { $day }

# A job that is told not to be moved.
move-stays =
    Kuchh nahi badla. Pehle jaisa: { $job ->
        [spray] spray
        [feed] khaad
        [pick] tudai
        [sow] buai
        [net] jaali lagana
        [net-down] jaali hatana
       *[other] { $job }
    }, { $beds }, { $day }. Doosre din karna ho to woh din likhein.

# Courtesies, and groups.
bot-words-hello = namaste ji | namaste bhai | pranam | ram ram | salaam | salam | helo
bot-words-thanks = shukriya | dhanyavaad | dhanyavad | dhanyawad | bahut shukriya | bahut dhanyavaad | theek hai shukriya | thik hai shukriya | thik h shukriya
bot-greeting = Namaste. Chhat ke paani, buai, keedon ya tudai ke baare mein poochhein, ya jo kaam hua woh likhein.
bot-thanks = Theek hai. Kuchh poochhna ya likhwana ho to likhein.
bot-group-alone = Group mein main sirf aam jawab deta hoon. Apne bed ke baare mein mujhe alag se likhein.

## What waits behind "more"
year-turns = { $first }{ $second }{ $third }
year-say-more = Sab aam mausam se, do hafte aage-peeche ho sakta hai. Har mahine ke liye "aur bataiye" kahein, ya ek fasal poochhein.
build-mix = Dheeli mitti { $litres }; baithkar { $settled }.

## Kai baaton ke record

recorded-bed-crop = Usmein { $crop } boyi gayi ya paudh lagayi gayi, aur kis din: yeh bhi batayein.
recorded-bed-sown =
    Usmein { $crop }: { $how ->
        [planted] paudh lagayi
       *[sown] beej boye
    }, { $day }.
record-other-later = Uske baad doosra kaam phir se likhein.

## Water of another time of the year, and in vessels
water-of-time = { $day } ke aaspaas ke aam dinon ke liye, is hafte ke liye nahi:
water-in-vessels = Yaani har baar { $count } { $word }.
water-vessel-unknown = { $word } mein abhi nahi gin sakta: har ghar mein naap alag hoti hai. Ek ko litre ki bottle se bharkar dekhein aur likhein, jaise: mug mein 700 ml aata hai.
record-vessel-unknown = Matra nahi likhi: aapke { $word } mein kitna aata hai, mujhe pata nahi. Likh dein, jaise: mug mein 700 ml aata hai.
record-which-amount = Matra nahi likhi: ek se zyada likhi thi. Kul likh dein, jaise: 700 g.
record-on-which-day = Kis din? Likh dein, jaise: 12 May.

## Saamanya sawaal, jo yahan pata nahi, aur jo sabse pehle karna hai

never-eat = Ise na kachcha khayein, na pakaakar: jo apne aap uga ho woh zehreela ho sakta hai, aur mushroom ya patte ko message se koi nahi pehchaan sakta. Dhature aur kaner ka har hissa zehar hai.
never-eat-do = Dastane pehenkar ukhaadein, koode mein dalein, bachchon aur jaanwaron se door rakhein. Team ko bata diya hai, taaki koi aakar dekh le.
caution-never-eat = kisi ne khaya ho to tukda saath lekar turant aspataal jayein; Bharat mein aapaat number 112 hai.
no-figures = { $plant } ke jaanche hue aankde mere paas nahi hain, aur doosre paudhe ke aankdon se andaza lagana theek nahi. Team ko bhej diya hai: koi aapko yahin jawab dega.
ask-of-what = Abhi samajh nahi aaya ki baat kiski hai. Kaun sa paudha ya bed hai, aur kya jaanna hai, ya kya kiya gaya?
ask-which-kind = Aap yeh poochh rahe hain: { $first }, ya { $second }?
choice-kind = { $kind ->
        [water] kitna paani dein
        [harvest] kab taiyar hoga
        [sow] kab boyein
        [shade] jaali lagegi ya nahi
        [spray] kab chhidkein
        [feed] kaun si khaad dein
        [mix] mitti mein kya milayein
        [build] banane mein kya saaman lagega
        [load] wazan kitna hoga
        [space] kitne paudhe lagenge
        [seed] kitna beej lagega
        [due] kya kaam baaki hai
       *[trouble] paudhe ko kya hua hai
    }
spray-general = { $material } aam taur par: sirf thande samay mein, tadke ya sooraj doobte samay, { $limit } se neeche, hawa na ho aur baarish aane wali na ho. { $every } din baad phir; ek din mein { $rain } mm baarish ise dho deti hai.
feed-general = Aam taur par: har { $every } din mein, halki, pehle paani di hui mitti par, shaam ko.
water-general = Aam taur par ungli batati hai: ek por neeche sookha ho tab paani dein, subah-subah.
due-missed = { $span ->
       *[day] { $first } ko
        [days] { $first } se { $last } tak
    } baaki tha aur hua likha nahi hai (paani ismein nahi gina):
due-missed-none = { $span ->
       *[day] { $first } ka
        [days] { $first } se { $last } tak ka
    } koi kaam baaki nahi: ya to ho gaya, ya tha hi nahi. Paani ismein nahi gina.
edge-fall = Kinare ya munder par kuch na rakhein, bandha ho tab bhi: gire to jaan le sakta hai. Gamle deewar ke peeche farsh par rakhein, neeche aur chaude, bhaari hissa neeche; oonche paudhe kisi pakki cheez se baandhein. Team ko bhej diya hai, taaki koi jagah dekh le.
caution-edge = theek karne ke liye bahar na jhukein; hatne tak neeche kisi ko na aane dein.

## What was done, where it was not understood.
ask-what-done = Wahan kya kaam hua?
choice-done = { $job ->
        [feed] khaad di
        [spray] spray kiya
        [pick] tudai ki
       *[other] paani diya
    }

## Jin kaaranon mein abhi fark nahi hua
trouble-may-be = Yeh { $first } ya { $second } ho sakta hai; jo aapne bataya woh dono mein hota hai.
trouble-in-common = { $part ->
        [pest] Dono mein pehle yeh karein: subah jaldi aur andhera hone par torch se patton ke neeche dekhein, jo dikhe haath se chunein, mulayam keede tez dhaar se dhoyein, aur sabse kharab patte thaili mein daalein. Abhi kuchh na chhidkein.
        [leaf] Dono mein pehle yeh karein: subah jaldi patton ke dono or dekhein, sabse kharab patte todkar thaili mein daalein, baaki sookhe rakhein, aur paani tabhi dein jab mitti ungli ke ek por tak sookhi ho. Abhi kuchh na chhidkein.
        [fruit] Dono mein pehle yeh karein: kharab phal todkar thaili mein daalein, ek kaatkar andar dekhein, mitti ki nami ek jaisi aur phal sookhe rakhein. Abhi kuchh na chhidkein.
        [flower] Dono mein pehle yeh karein: ek phool safed kagaz par jhaadkar dekhein, mitti ki nami ek jaisi rakhein, tez garmi mein dopahar ko chhaya dein. Abhi na khaad dein, na kuchh chhidkein.
        [seedling] Dono mein pehle yeh karein: giri hui paudh aaspaas ki ek chammach mitti samet nikaalein, hawa aur roshni dein, aur paani tabhi dein jab upar sookha ho. Abhi na khaad dein, na kuchh chhidkein.
       *[plant] Dono mein pehle yeh karein: mitti mein ungli bhar gehrai tak chhookar dekhein. Sookhi ho to poora paani dein; geeli ho to rukein aur dekhein ki nikaas ke chhed khule hon. Dopahar mein chhaya dein; patton ke neeche aur tane ke paas dekhein. Abhi na khaad dein, na kuchh chhidkein.
    }

## What is never helped with, and who needs people now.
declined-harm = Kisi insaan, jaanwar ya kisi aur ke paudhon ko nuksan pahunchane mein mujhse madad nahi milegi. Jaanwaron ko chot pahunchaye bina apne bed se door kaise rakhein, yeh pooch sakte hain.
despair-first = Abhi is baat ke saath akele na rahein: paas ke kisi vyakti ke paas jaayein ya kisi ko phone karein, aur batayein ki man par kya beet rahi hai. Doctor madad kar sakte hain.
mix-swollen = Dabi hui { $material }, { $mass }: bheegkar { $litres }.
due-round = { $how ->
       *[one] Kaam ek hi chhat par hai: { $sites }.
        [several] Is kram se: { $sites }. Pehli se chalein to yahi chhota raasta hai; doosra sira aapke paas ho to udhar se shuru karein.
    }

## Shoots eaten raw

caution-raw-shoots = garbhvati, chhote bachche, buzurg aur beemar log ankur achhi tarah pakaakar hi khayein. Jis tray se badbu aaye, jo chipchipi ho, jis par saleti ya kaali fafoond ho ya jis par kuchh chhidka gaya ho, use koi na khaye.

## A turn left out

water-skip-turn = Ungli ke ek por neeche tak geeli hai to yeh baari chhod dein; agli baari par phir chhookar dekhein, sookhi ho tab paani dein.
## Ek saath paani
water-once = Yeh poore din ka paani hai: do-teen baar mein, kuchh minute ruk-ruk kar daalein, aur neeche se nikalne lage to ruk jayein. Is garmi mein din mein do baar behtar hai; mulch aur dopahar mein jaali se sahara milta hai.
ask-new-bed-size = Kitna bada hai? Lambai, chaudai aur gehrai batayein; gol ho to kitna chauda aur gehra; thaili ho to kitne litre ki.
mix-bags = { $holds } ki thailiyan hon to { $bags }, agar unmein taiyar dheeli mitti hai.
bed-counted = { $count } × { $bed }
mix-groups = { $beds }, sab milakar: dheeli mitti { $litres } lagegi; baithkar { $settled } reh jayegi.
mix-have =
    { $how ->
        [short] { $holds } taiyar mitti iske liye kam hai.
        [enough] { $holds } taiyar mitti in sabke liye kaafi hai.
       *[fills] { $holds } taiyar mitti se aise { $fills } bharenge.
    }
load-groups = { $beds }, geele: sab milakar paudhon samet { $mass }. Neeche ki slab par sabse zyada { $bed } daalta hai: { $load }.
water-of-all = Sab { $count } ke liye milakar: roz { $day }.
space-row = { $length } ki katar
