# What rooftend says, in Hindi. The keys are those of the English file.
# A bed, a crop or a material stands before a colon or a comma: its name may be English and takes no ending.

## Small pieces

day = { $weekday } { $date } { $month }
day-either-way = { $day } के आसपास, एक दिन आगे-पीछे
day-span = { $day } के आसपास ({ $low } से { $high } के बीच)
span = { $low } से { $high }
and-last = { $all } और { $last }
weekday-0 = सोम
weekday-1 = मंगल
weekday-2 = बुध
weekday-3 = गुरु
weekday-4 = शुक्र
weekday-5 = शनि
weekday-6 = रवि
month-1 = जनवरी
month-2 = फ़रवरी
month-3 = मार्च
month-4 = अप्रैल
month-5 = मई
month-6 = जून
month-7 = जुलाई
month-8 = अगस्त
month-9 = सितंबर
month-10 = अक्टूबर
month-11 = नवंबर
month-12 = दिसंबर
unit-L = { $n } लीटर
unit-ml = { $n } मिली
unit-kg = { $n } किलो
unit-g = { $n } ग्राम
unit-mm = { $n } मिमी
unit-m = { $n } मीटर
unit-m2 = { $n } वर्ग मीटर
unit-ft = { $n } फुट
unit-in = { $n } इंच
unit-cm = { $n } सेमी
unit-ft2 = { $n } वर्ग फुट
unit-percent = { $n } %
unit-celsius = { $n } °C
unit-ml-per-l = हर लीटर में { $n } मिली
unit-g-per-l = हर लीटर में { $n } ग्राम
unit-kn-m2 = { $n } kN/m²
bed-described =
    { $kind ->
        [tray] { $size } की ट्रे
        [pot] { $size } का गमला
        [basket] { $size } की टोकरी
        [bag] { $size } का बैग
       *[box] { $size } का डिब्बा
    }

## Water

water-past-heat =
    { $crop }: यह गर्मी बर्दाश्त से ज़्यादा है। दिन में { $tmax }, और { $limit } से ऊपर { $beyond ->
        [bolts] फूल की डंडी निकल आती है
        [turns-bitter] कड़वाहट आ जाती है
        [drops-flowers] फूल झड़ जाते हैं
        [scorches] पौधा झुलस जाता है
       *[stops] बढ़त रुक जाती है
    }। पानी से पौधा बच जाएगा, पर पनपेगा नहीं।
water-past-cold = { $crop }: यह ठंड बर्दाश्त से ज़्यादा है। रात में { $tmin }, और { $limit } से नीचे पौधे को नुक़सान होता है। अभी पानी कम लगता है।
water-rhythm =
    { $rhythm ->
        [none] { $bed }: इस हफ़्ते पानी न दें, जितना सूखेगा बारिश उससे ज़्यादा देगी।
        [weekly] { $bed }: इस हफ़्ते एक बार क़रीब { $turn } पानी दें (कुल { $week })।
        [third] { $bed }: हर तीसरे दिन सुबह क़रीब { $turn } पानी दें (हफ़्ते में कुल { $week })।
        [second] { $bed }: एक दिन छोड़कर सुबह क़रीब { $turn } पानी दें (हफ़्ते में कुल { $week })।
        [daily] { $bed }: रोज़ सुबह क़रीब { $turn } पानी दें (हफ़्ते में कुल { $week })।
        [twice] { $bed }: रोज़ सुबह क़रीब { $turn } और शाम को क़रीब { $turn } पानी दें (हफ़्ते में कुल { $week })।
       *[thrice] { $bed }: रोज़ तीन बार क़रीब { $turn } पानी दें: तड़के, दोपहर को छाँव में, शाम को (हफ़्ते में कुल { $week })।
    }
water-more-beds = और { $count } बेड बाक़ी; किसी का नाम लेकर पूछें।
water-all-beds = सब बेड मिलाकर रोज़ { $day }।
water-reason =
    रोज़ { $loss } पानी सूखता है{ $air ->
        [dry] : दिन में { $tmax } और हवा सूखी है।
        [wet] ; इस हफ़्ते { $rain } बारिश का अंदाज़ा है।
       *[plain] : दिन में { $tmax } तक गर्मी है।
    }
water-check =
    { $hot ->
        [hot] पहले पाइप का गरम पानी निकाल दें; उँगली के एक पोर नीचे मिट्टी अब भी नम हो तो इस बार रहने दें।
       *[mild] उँगली के एक पोर नीचे मिट्टी अब भी नम हो तो इस बार रहने दें।
    }
assumed-bed = आपके बेड की जानकारी नहीं है, इसलिए यह माना: { $bed }, 6 घंटे धूप। अपना बताएँ तो हिसाब बेहतर होगा।
assumed-sun = सीधी धूप { $hours } घंटे मानी है; कम या ज़्यादा हो तो बताएँ।
assumed-usual-days = आपकी छत के आने वाले दिनों का मौसम नहीं मिला; { $place } के इस मौसम के आम दिन माने हैं, इसलिए हिसाब मोटा है।
ask-which-bed = किस बेड के बारे में?
ask-what-bed = कौन सी फ़सल है, और बेड कितना बड़ा है? जैसे: 12 इंच के गमले में टमाटर।
ask-which-place = आप किस शहर में हैं? हिसाब के लिए वहाँ का मौसम चाहिए।
choice-bed = { $bed }
choice-place = { $place }
choice-size = { $size }
choice-article = { $title }
choice-water = टमाटर के बैग में कितना पानी दें?
choice-harvest = सरसों वाली ट्रे कब कटेगी?
choice-person = किसी इंसान से बात कराइए

## Why: water

working-bed = हिसाब, { $bed }:
working-forecast = मौसम: { $day } का पूर्वानुमान, एक-एक दिन का।
working-forecast-undated = मौसम: पूर्वानुमान की फ़ाइल, एक-एक दिन का; उसमें नहीं लिखा कि कब बनी।
working-usual-days = मौसम: 7 में से { $days } दिन { $place } के आम दिन माने ({ $period }, { $distance } किमी दूर); असली दिन इनसे अलग होते हैं।
working-no-weather = मौसम: कुछ पता नहीं।
working-reference = खुले में घास से उड़ने वाला पानी (reference ET): रोज़ { $et } ({ $source }, Penman-Monteith)।
working-procedure =
    नापा नहीं गया: { $what ->
        [sunshine] सूरज की ऊर्जा, धूप के घंटों से निकाली
        [solar] सूरज की ऊर्जा, दिन-रात के तापमान के फ़र्क़ से निकाली
        [dew-point] हवा की नमी, रात के सबसे कम तापमान से निकाली
        [humidity-mean] हवा में भाप का दबाव, औसत नमी से निकाला
        [wind] हवा, 2 मीटर प्रति सेकंड मानी
       *[sunless] बिना धूप वाले दिन के बादल, अंदाज़े से माने
    } ({ $source })।
working-light = सीधी धूप { $hours } घंटे{ $shade ->
        [open] {""}
       *[net] , और { $net } धूप रोकने वाली जाली
    }: बेड का अपना हिसाब रोज़ { $et } (सीधी किरण eq. 28 से; बिखरी रोशनी Erbs, Klein और Duffie 1982 से)।
working-coefficients = फ़सल का गुणांक: पत्ते { $basal } + खुली गीली सतह { $evaporation }, ज़्यादा से ज़्यादा { $highest } (fao56: eq. 70 से 76; छत पर पौधे कम हों तो 5 % ज़्यादा, यह अपना अंदाज़ा है)।
working-loss = सूखते किनारों समेत: रोज़ { $loss }, { $area } पर = रोज़ { $day }; हफ़्ते की बारिश { $rain }।
working-surface = ऊपर की परत: खुले हिस्से से रोज़ { $bare } सूखता है (fao56: eq. 77) और { $limit } के बाद ऊपर सूखा दिखता है (आम चलन, कोई स्रोत नहीं)।
working-roots = जड़ें { $limit } तक ले सकती हैं, उसके बाद पानी कम पड़ता है (fao56: eq. 83, मिट्टी में आसानी से मिलने वाले पानी से)। जो पहले आए वही तय करता है: { $decides ->
        [surface] ऊपर की परत।
       *[roots] जड़ें।
    }
working-rhythm =
    यानी हफ़्ते में { $often } बार पानी; तय हुआ: { $rhythm ->
        [none] पानी नहीं
        [weekly] हफ़्ते में एक बार
        [third] हर तीसरे दिन
        [second] एक दिन छोड़कर
        [daily] रोज़ एक बार
        [twice] रोज़ दो बार
       *[thrice] रोज़ तीन बार
    }।
working-doubt =
    अंदाज़ा है कि दस में से नौ बार सही मात्रा इसी बीच होगी; सबसे बड़ा शक यह कि { $doubt ->
        [sun-spell] बेड पर धूप किस समय आती है
        [weather] मौसम कैसा रहेगा
        [small-stand] गरम छत पर छोटे बेड से कितना ज़्यादा सूखता है
        [sides] किनारे कितनी जल्दी सूखते हैं
        [leaves] पत्तों से कितना पानी उड़ता है
        [wind] हवा कितनी है, जो पता नहीं
        [humidity] नमी कितनी है, जो पता नहीं
        [rain] बारिश कितनी होगी
        [surface-limit] ऊपर की परत कब सूखी दिखती है
       *[root-limit] मिट्टी कितना पानी देती है
    }।

## Harvest

harvest-first =
    { $when ->
        [now] { $crop } ({ $bed }): { $day } से तुड़ाई का समय चल रहा है, आज ही देख लें।
        [past] { $crop } ({ $bed }): तैयार होने का दिन { $day } था और तुड़ाई का समय निकल चुका है; आज देख लें, ख़त्म हो तो हटा दें।
       *[ahead] { $way ->
            [tray] { $crop }, { $bed }: कटाई { $day }।
           *[bed] { $crop }, { $bed }: पहली तुड़ाई { $day }।
        }
    }
harvest-reason = दिन { $tmax } और रात { $tmin } के हिसाब से गिना: कुल क़रीब { $days } दिन।
harvest-other-start = एक ही तारीख़ पता है, इसलिए पौध कितने दिन की थी यह अंदाज़ा है; तारीख़ से ज़्यादा आँख पर भरोसा करें।
harvest-signs = { $signs }
harvest-expected = उम्मीद: कुल { $grams }।
harvest-say-when =
    { $how ->
        [planted] { $crop }: पौध कब लगाई थी? बताएँ तो दिन निकल आएगा।
       *[sown] { $crop }: बीज कब बोए थे? बताएँ तो दिन निकल आएगा।
    }
ask-what-grows = { $bed }: इसमें क्या लगा है, और कब से?
ask-which-crop = कौन सी फ़सल, और कब बोई थी?
working-thermal-time =
    { $crop }, { $how ->
        [planted] पौध लगी { $day }
       *[sown] बीज बोए { $day }
    }: { $base } से ऊपर { $sum } डिग्री-दिन चाहिए, { $upper } से ऊपर कुछ नहीं जुड़ता ({ $source })।
working-harvest-days = गिने दिनों में से { $days } दिन { $place } के आम दिन हैं, पूर्वानुमान नहीं।
working-claim = अंदाज़ा है कि दस में से नौ बार सही दिन इसी बीच होगा: बीज और दिन एक से नहीं होते।
working-yield = उपज: { $area } में { $grams } ({ $source })।

## Mix and build

mix-recipe = { $mix }, नापकर (तौलकर नहीं): { $parts }। साइज़ बताएँ तो लीटर में हिसाब मिल जाएगा।
mix-litres =
    { $count ->
        [1] { $bed }: ढीली मिट्टी { $litres } लगेगी; बैठकर { $settled } रह जाएगी।
       *[other] { $bed }, { $count } नग: कुल ढीली मिट्टी { $litres } लगेगी; बैठकर { $settled } रह जाएगी।
    }
mix-parts = { $parts }।
mix-part = { $material } { $amount }
mix-share = { $material } { $percent }
mix-addition = हर लीटर में { $material } { $grams } ग्राम
build-parts = { $bed }: पानी निकलने वाली ट्रे { $trays } ({ $tray } की), किनारे की पट्टी { $sides } ({ $height } ऊँची), अस्तर का कपड़ा { $cloth }, तार { $wire }।
assumed-depth = गहराई नहीं बताई, इसलिए { $depth } मानी है।
assumed-tray = ट्रे { $tray } की मानी है; आपकी दूसरे साइज़ की हो तो बताएँ।
ask-size = डिब्बा कितना बड़ा है? लंबाई, चौड़ाई और गहराई बताएँ।
working-mix = बैठने के बाद { $settled }, ऊपर { $rim } ख़ाली छोड़कर; ढीली मिट्टी बैठकर { $settling } घटती है, इसलिए { $loose }।
working-recipe = { $mix }: { $parts }।
working-trays = सब ट्रे एक ही रुख़ में, किनारे से किनारा फँसाकर: लंबाई में { $along }, चौड़ाई में { $across }; दोनों रुख़ में से वह जिसमें कम लगें।
working-parts = किनारे की पट्टी एक बार चारों ओर; कपड़ा तले और किनारों पर एक ही टुकड़े में, ऊपर से 10 सेमी बाहर; चारों कोनों पर हर 15 सेमी ऊँचाई पर 40 सेमी तार का बंधन (आम चलन, कोई स्रोत नहीं)।

## Care, hand-over, none

article = { $answer }
working-article = इस लेख से: { $title }।
which-article = इनमें से किसके बारे में?
handed-over-person = टीम को बता दिया है: कोई आपको यहीं जवाब देगा।
handed-over-kind =
    { $kind ->
        [sow] कब क्या बोएँ, इसका
        [shade] जाली और छाँव का
        [spray] स्प्रे का
        [feed] खाद का
        [load] छत पर वज़न का
        [space] पौधों की दूरी का
        [seed] बीज की मात्रा का
        [trouble] पौधे को क्या हुआ, इसका
        [due] कौन सा काम कब करना है, इसका
       *[other] इसका
    } हिसाब अभी मुझसे नहीं होता, इसलिए आपका सवाल टीम को भेज दिया है।
handed-over-unknown = इसका ठीक जवाब मेरे पास नहीं है। टीम को भेज दिया है: कोई आपको यहीं जवाब देगा।
declined = इसमें मुझसे मदद नहीं हो पाएगी। मुझे आपकी छत के बेड, पानी, बुवाई और तुड़ाई की जानकारी है।
not-understood = समझ नहीं आया। ऐसे पूछकर देखें:

## Records

recorded-job =
    लिख लिया: { $job ->
        [water] पानी दिया
        [spray] स्प्रे किया
        [feed] खाद दी
        [flush] सादे पानी से धोया
        [thin] घने पौधे निकाले
        [prune] काट-छाँट की
        [stake] सहारा लगाया
        [pick] तुड़ाई की
        [pull] पौधे उखाड़े
        [net] जाली
        [mix] नई मिट्टी
        [top-up] ऊपर से मिट्टी भरी
        [clear] ख़ाली किया
        [mend] मरम्मत की
       *[check] देख लिया
    }{ $amount ->
        [none] {""}
       *[other] , { $amount }
    }, { $beds }, { $day }।
recorded-sown =
    लिख लिया: { $crop }, { $how ->
        [planted] पौध लगाई
       *[sown] बीज बोए
    }, { $beds }, { $day }।
recorded-seen =
    लिख लिया, { $beds }, { $day }: { $what ->
        [still-wet] अब भी गीला
        [dry-early] समय से पहले सूखा
       *[ran-through] पानी सीधा नीचे निकल गया
    }।
record-stranger = आपसे अभी पहचान नहीं है, इसलिए आपका काम यहाँ नहीं लिखा जा सकता। टीम से कहें कि आपको जोड़ दें।
record-future = { $day } अभी आया नहीं। काम किस दिन हुआ?
record-not-yours = { $bed }: इसका काम आपके नाम से नहीं लिखा जा सकता।
record-no-bed = यहाँ अभी आपका कोई बेड नहीं है। बात टीम को भेज दी है।
record-unknown = समझ नहीं आया कि क्या काम हुआ, इसलिए कुछ नहीं लिखा; बात टीम को भेज दी है।
record-which-crop = कौन सी फ़सल थी?
record-not-kept = यह लिखा नहीं जा सका, कहीं दर्ज नहीं हुआ। दोबारा भेजें।

## Cautions

caution = सावधानी: { $text }
caution-text = { $text }
caution-weight = पूरा भीगने पर वज़न { $weight } तक हो सकता है, पौधे और लोग अलग। बनाने से पहले ऐसे स्ट्रक्चरल इंजीनियर से पूछें जिसने यह छत देखी हो; छत झेल लेगी, यह यहाँ से नहीं कहा जा सकता।
caution-load = छत या बालकनी वज़न झेल लेगी, यह यहाँ से नहीं कहा जा सकता। ऐसे स्ट्रक्चरल इंजीनियर से पूछें जिसने स्लैब देखा हो; तब तक भारी चीज़ें किनारे से दूर रखें।
caution-spray = मात्रा और तोड़ने से पहले रुकने के दिन लेबल से लें; धूप या हवा में नहीं, दस्ताने और मास्क पहनकर।

## Front

demo-greeting = यह नागपुर का बनावटी बाग़ीचा है; ग्राहक और मौसम भी बनावटी हैं। तीन चीज़ें पूछकर देखें:
demo-note = (डेमो: बनावटी बाग़ीचा, बनावटी मौसम; यहाँ जो लिखा जाए वह बाद में मिटा दिया जाता है)

## Sow

# (end of: Sow)

## Shade

# (end of: Shade)

## Spray

# (end of: Spray)

## Feed

# (end of: Feed)

## Load

load-bed =
    { $count ->
        [1] { $bed }, गीला: पौधों समेत { $mass }, आम पानी देने के बाद क़रीब { $usual }। नीचे की स्लैब पर { $load } पड़ता है।
       *[other] { $count } नग, { $bed }, गीले: कुल { $mass }, आम पानी देने के बाद क़रीब { $usual }। हर एक के नीचे की स्लैब पर { $load } पड़ता है।
    }
load-depth = हमारी हल्की मिट्टी { $depth }, गीली: हर वर्ग मीटर पर { $mass } (हर वर्ग फुट पर { $foot }), यानी { $load }; ढाँचा, पौधे और लोग अलग।
load-limit =
    इस छत के लिए इंजीनियर की लिखी सीमा { $limit } है। सबसे भारी हालत में (नाली बंद, पानी भरा) यह { $larger ->
        [load] उससे ज़्यादा है: न रखें या हल्का करें, और यह आँकड़ा लेकर इंजीनियर से फिर पूछें।
       *[limit] उससे कम है, पर उसी सीमा में लोग और बाक़ी सब भी आते हैं: कितना बचता है, यह इंजीनियर बताएँगे।
    }
load-ask = इंजीनियर से पूछें: लोग और टंकी छोड़कर कितने kN/m², बीम और भार उठाने वाली दीवारें कहाँ हैं, स्लैब ठीक हालत में है या नहीं।
load-engineer = इस छत के लिए इंजीनियर की लिखी सीमा { $limit } है। बक्सों के अलावा उसमें क्या-क्या आता है (लोग, टंकी, बारिश), यह इंजीनियर ही बताएँगे।
load-no-engineer = इस छत के लिए इंजीनियर का कोई आँकड़ा लिखा नहीं है, इसलिए हाँ: भारी कुछ भी रखने से पहले पूछें।
load-site =
    { $count ->
        [1] { $site } पर दो लोग और बोरियाँ आने के दिन मिलाकर: { $mass }।
       *[other] { $site } के सारे { $count } बेड, दो लोग, बंद नाली और बोरियों तक मिलाकर: { $mass }।
    }
load-heaviest = { $parts }। अपनी जगह पर सबसे भारी, { $bed }, नीचे की स्लैब पर { $load } डालता है।
load-one = { $bed } { $mass }
load-lower = हल्का करने के लिए: कम गहराई, बक्सों के बीच ज़्यादा जगह, बाग़ की मिट्टी नहीं (गीली { $soil } किलो प्रति लीटर)।
load-doubt =
    { $what ->
        [damage] अभी ऊपर और कुछ न रखें, और बिना जोखिम हो सके तो भारी चीज़ें हटा दें: पुरानी छत, दरार या सीलन पहले स्ट्रक्चरल इंजीनियर देखें।
        [hanging] अभी वहाँ न टाँगें: रेलिंग या छत का हुक गीली मिट्टी के लिए नहीं बना, और गिरा तो जान जा सकती है। पहले ऐसे काम का जानकार देखे।
       *[place] बिना सहारे वाले किनारे के पास नहीं। भारी बक्से किस बीम या दीवार के ऊपर रहें, यह वही इंजीनियर बता सकता है जो स्लैब को जानता हो।
    } बात टीम को भेज दी है।
load-assumed = आपका बेड लिखा नहीं है: यह { $bed } के लिए है। अपना बताइए।
ask-load-size = कितना बड़ा है? बक्से की लंबाई, चौड़ाई और गहराई, या बैग के लीटर बताइए।
choice-all-beds = सारे बेड
caution-hanging = उसके नीचे किसी को न रहने दें, और उसे कसने या पानी देने के लिए किनारे से बाहर न झुकें।
working-load-mix = { $mix }: पानी देकर निथरने पर { $wet } किलो प्रति लीटर, हर छेद भरा हो तो { $full } किलो प्रति लीटर।
working-load-parts = मिट्टी निथरी हुई { $mix }, पानी से भरी { $full }; ऊपर और ट्रे में खड़ा पानी { $ponded }; ढाँचा, ट्रे या गमला { $vessel }; पौधे { $plants }।
working-load-ground = { $ground } पर खड़ा है: { $load }, निथरे से लेकर बंद नाली तक, 9.81 m/s² पर।
working-load-depth = एक वर्ग मीटर पर: { $load }, निथरे से लेकर हर छेद भरने तक, 9.81 m/s² पर।
working-load-site = बेड { $beds }; दो लोग { $people }; सबसे बड़े बेड की बोरियाँ, आने के दिन, गीली { $sacks }।
working-load-judged = ढाँचे, ट्रे, पौधों और लोगों का वज़न अनुमान है, कोई स्रोत नहीं; दस में नौ बार इसी सीमा में।
working-load-code = भवन नियमों का छत या बालकनी का आँकड़ा लोगों और फ़र्नीचर के लिए होता है: बक्से उसके ऊपर आते हैं, इसलिए उससे तुलना नहीं की गई।

# (end of: Load)

## Space and seed

ask-space-crop = कौन सी फ़सल? दूरी 5 सेमी से आधे मीटर तक अलग-अलग होती है।
ask-seed-crop = किस फ़सल का बीज, और कितने बड़े बेड या ट्रे के लिए?
space-plants =
    { $verdict ->
        [too-many] { $asked } ज़्यादा हैं। { $bed }: { $one ->
            [one] { $crop } का 1 पौधा।
            [first] { $crop } का 1 पौधा, ज़्यादा से ज़्यादा { $plants }।
           *[more] { $crop } के क़रीब { $usual } पौधे (दूरी के हिसाब से { $plants })।
        }
        [tight] { $asked } तंग रहेंगे। { $bed }: { $crop } के क़रीब { $usual } पौधे (दूरी के हिसाब से { $plants })।
       *[none] { $bed }: { $one ->
            [one] { $crop } का 1 पौधा
            [first] { $crop } का 1 पौधा (दूरी के हिसाब से { $plants })
           *[more] { $crop } के क़रीब { $usual } पौधे (दूरी के हिसाब से { $plants })
        }{ $share ->
            [shared] , बेड बराबर बाँटकर
           *[whole] {""}
        }।
    }
space-density = यानी एक वर्ग मीटर में क़रीब { $metre }{ $few ->
    [few] {""}
   *[many] , एक वर्ग फुट में { $foot }
}।
space-bed = { $bed }
space-gap = { $crop }: पौधे से पौधा { $cm } सेमी ({ $inches } इंच){ $edge ->
    [rim] {""}
   *[edge] , किनारे से { $half } सेमी
}।
space-between = { $one } और { $other } के बीच: क़रीब { $cm } सेमी।
space-litres = हर पौधे को { $litres } मिट्टी अपनी चाहिए: गर्मी में कम मिट्टी दो पानी के बीच सूख जाती है।
space-empty = गिनती ख़ाली बेड की है: जो अभी लगा है उसकी जगह घटा लें।
space-strewn = अंकुर वाली ट्रे में दूरी नहीं: बीज एक-सा फैलाएँ, पास-पास पर एक के ऊपर एक नहीं।
space-ground = { $area }
working-space-rows = सीधी कतारों में लंबाई में { $along }, चौड़ाई में { $across } = { $square }; हर दूसरी कतार आधी दूरी खिसकाकर { $staggered }, { $cm } सेमी पर।
working-space-round = गोल: गोले के भीतर गोले या तिकोनी जाली, जिसमें ज़्यादा आएँ।
working-space-litres = गमले या बैग में जड़ें तय करती हैं: हर पौधे को { $litres } (आम चलन, कोई स्रोत नहीं; छपे हुए गमले के नापों से मिलाकर)।
working-space-ground = क्षेत्रफल भाग दूरी का वर्ग; सँकरे बेड में किनारे कुछ कम कर देते हैं।
working-space-edge = पौधा किनारे से आधी दूरी पर खड़ा हो सकता है। सबसे ज़्यादा से सबसे कम दूरी तक: पौधों की सीमा।
seed-grams =
    { $way ->
        [tray] { $place }: { $crop } का क़रीब { $about } बीज ({ $grams }), अंकुर के लिए घना फैलाकर।
        [weight] { $place }: { $crop } का क़रीब { $about } बीज ({ $grams })।
        [few] { $place }: { $crop } के क़रीब { $count } दाने ({ $seeds }), 1 ग्राम से कम।
       *[bed] { $place }: { $crop } का क़रीब { $about } बीज ({ $grams }), कोई { $count } दाने।
    }
seed-how = यह हर जगह डालकर बाद में एक पौधा छोड़ने का हिसाब है; ख़ाली जगहों के लिए थोड़ा ज़्यादा चलेगा।
seed-tray-how = सिर्फ़ बिना दवा वाला, खाने या अंकुर के लिए बिकने वाला बीज; एक परत, ढेर नहीं।
seed-packet =
    { $enough ->
        [enough] { $packet } काफ़ी है।
        [short] { $packet } कम पड़ेगा।
       *[about] { $packet } बस पूरा-पूरा होगा।
    }
seed-unknown = { $crops } के बीज का जाँचा हुआ वज़न मेरे पास नहीं है; टीम से कोई बताएगा।
seed-plants = { $count } पौधे
seed-range = { $low } से { $high } ग्राम
seed-row = { $length } की कतार
seed-beds = { $count } × { $bed }
working-seed-plants = { $cm } सेमी पर { $plants } पौधे, हर एक के लिए { $laid } बीज, { $comes } % उगते हैं।
working-seed-weight = 1000 बीज का वज़न { $grams } ग्राम।
working-seed-tray = हर वर्ग मीटर पर { $grams } ग्राम × { $area }।
mix-all-beds =
    { $count ->
        [1] एक बेड
       *[other] { $count } बेड मिलाकर
    }
mix-blocks = { $material } दबी हुई ईंटों में आती है: { $mass } फूलकर इतनी होती है, 5 किलो वाली { $blocks }।
mix-top-up = { $bed }, { $sunk } फिर से भरना: { $litres } खुली मिट्टी।
build-round =
    { $bed }: { $cloth ->
        [none] न ट्रे, न किनारा, न अस्तर; नीचे पानी निकलने के छेद रखें
       *[other] { $cloth } कपड़ा, चौकोर कटा; ट्रे या किनारा नहीं
    }।
build-site = { $bed }: { $tray } वाली { $trays } निकासी ट्रे, { $sides } किनारा, { $cloth } कपड़ा, { $wire } तार।
working-build-site = एक-एक बेड जोड़कर, आख़िर में एक बार पूरा किया; टोकरी और गोल गमले में कपड़ा लगता है, ट्रे नहीं; बैग और अंकुर ट्रे में कुछ नहीं।

# (end of: Space and seed)

## Water: away, salts, what was seen

# (end of: Water: away, salts, what was seen)
