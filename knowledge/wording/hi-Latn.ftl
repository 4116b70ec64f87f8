# What rooftend says, in romanised Hindi. The keys are those of the English file.
# A bed, a crop or a material stands before a colon or a comma: its name may be English and takes no ending.

## Small pieces

day = { $weekday } { $date } { $month }
day-either-way = { $day } ke aas-paas, ek din aage-peeche
day-span = { $day } ke aas-paas ({ $low } se { $high } ke beech)
span = { $low } se { $high }
and-last = { $all } aur { $last }
weekday-0 = Som
weekday-1 = Mangal
weekday-2 = Budh
weekday-3 = Guru
weekday-4 = Shukra
weekday-5 = Shani
weekday-6 = Ravi
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
       *[plain] : din mein { $tmax } tak garmi hai.
    }
water-check =
    { $hot ->
        [hot] Pehle pipe ka garam paani nikaal dein; ungli ke ek por neeche mitti ab bhi nam ho to is baar rehne dein.
       *[mild] Ungli ke ek por neeche mitti ab bhi nam ho to is baar rehne dein.
    }
assumed-bed = Aapke bed ki jaankari nahi hai, isliye yeh maana: { $bed }, 6 ghante dhoop. Apna batayein to hisaab behtar hoga.
assumed-sun = Seedhi dhoop { $hours } ghante maani hai; kam ya zyada ho to batayein.
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
working-yield = Upaj: { $area } mein { $grams } ({ $source }).

## Mix and build

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
build-parts = { $bed }: paani nikalne wali tray { $trays } ({ $tray } ki), kinare ki patti { $sides } ({ $height } oonchi), astar ka kapda { $cloth }, taar { $wire }.
assumed-depth = Gehrai nahi batayi, isliye { $depth } maani hai.
assumed-tray = Tray { $tray } ki maani hai; aapki doosre size ki ho to batayein.
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
        [prune] kaat-chhaant ki
        [stake] sahara lagaya
        [pick] tudai ki
        [pull] paudhe ukhaade
        [net] jaali
        [mix] nayi mitti
        [top-up] upar se mitti bhari
        [clear] khaali kiya
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
caution-weight = poora bheegne par wazan { $weight } tak ho sakta hai, paudhe aur log alag. Banane se pehle aise structural engineer se poochhein jisne yeh chhat dekhi ho; chhat jhel legi, yeh yahan se nahi kaha ja sakta.
caution-load = chhat ya balcony wazan jhel legi, yeh yahan se nahi kaha ja sakta. Aise structural engineer se poochhein jisne slab dekha ho; tab tak bhaari cheezein kinare se door rakhein.
caution-spray = maatra aur todne se pehle rukne ke din label se lein; dhoop ya hawa mein nahi, dastane aur mask pehankar.

## Front

demo-greeting = Yeh Nagpur ka banavati bageecha hai; grahak aur mausam bhi banavati hain. Teen cheezein poochhkar dekhein:
demo-note = (demo: banavati bageecha, banavati mausam; yahan jo likha jaye woh baad mein mita diya jata hai)

## Sow

# (end of: Sow)

## Shade

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
spray-moved = Din aage kiya, wajah: { $by }.
spray-obstacle =
    { $what ->
        [rain] baarish
        [wind] hawa
       *[heat] garmi
    }
spray-usual-day = Us din ka poorvanuman nahi hai, baarish aur hawa nahi gini: aasmaan dekh lein.
spray-look = Pehle taiyar fasal tod lein, aur wahin chhidkein jahan patton ke neeche keede milein.
spray-tray = Ankur wali tray par kuchh nahi chhidakte: kuchh din mein katkar poori khayi jaati hai. Hawa dein, paani kam karein; phaphoond wala hissa phenk dein.
spray-strength = saada { $material }: ek litre paani mein { $start } ml se shuru karein; { $dose } ml tak chalta hai, { $limit } ml se zyada kabhi nahi.
spray-add-soap = Tel ghulne ke liye kuchh boond halka sabun daalein; baar-baar hilayein.
spray-into = { $volume } paani mein { $amount }.
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
spray-from-record = Is bed ka aakhri darj spray maana hai; koi aur tha to batayein.
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
       *[unknown] { $bed }: har { $every } din khaad dein. Koi khaad darj nahi hai; di ho to us din se ginein.
    }
feed-next-rhythm = Agli khaad { $day }: aam taur par har { $every } din. Us fasal ki poori jaankari nahi, isliye patli rakhein.
feed-strew = { $material }: poore bed mein { $grams }, tane se ek haath door, halka milakar paani dein.
feed-strew-area = { $material }, sookhi: har varg metre par { $grams } g, tane se ek haath door, halka milakar paani dein.
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

# (end of: Load)

## Space and seed

# (end of: Space and seed)

## Water: away, salts, what was seen

# (end of: Water: away, salts, what was seen)
