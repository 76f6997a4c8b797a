package value

import (
	"strings"
	"sync"
)

// otherColourWord is the hue that one folded word names in further languages: Polish, Dutch, Czech,
// Swedish, Danish and Norwegian, Portuguese, Finnish, Hungarian, Turkish, Romanian, Russian, Ukrainian, Croatian, Slovene,
// Greek, Japanese, Chinese, Korean. From
// memory, no source. A shop says its own words in a recipe.
func otherColourWord(word string) (int, bool) {
	if base, ok := strings.CutSuffix(word, "色"); ok && base != "" {
		word = base
	}
	hue, ok := otherColours()[word]
	return hue, ok
}

// otherColours are the hues by these words. Nothing writes it.
var otherColours = sync.OnceValue(func() map[string]int {
	all := map[string]int{}
	for hue, words := range moreColours() {
		for _, w := range strings.Fields(words) {
			if _, twice := all[w]; !twice { // the first hue has it
				all[w] = hue
			}
		}
	}
	return all
})

// moreColours are the words of each hue in these languages.
func moreColours() [15]string {
	return [15]string{
		0: " 黒 黑 검정 흑 mauro μαυρο μαύρο чорний crna crn czarno черно czarny czarna zwart cerna cerny svart sort preto " +
			"preta musta fekete siyah negru neagra черный чёрный черн " +
			"czarne cerne cerno ",
		1: " 茶 棕 褐 갈 갈색 καφε καφέ коричневий smed smeda rjav rjava brazowo brazowy brazowa bruin hneda hnedy brunt " +
			"castanho castanha marrom ruskea barna kahverengi maro коричневый кор " +
			"brazowe braz hnede hnedo kahve cafe ",
		2: " 赤 红 紅 빨강 적 κόκκινο κοκκινο червоний crven crvena rdec rdeca czerwono красно czerwony czerwona rood cervena " +
			"cerveny ruda rudy rod rodt vermelho vermelha punainen piros voros kirmizi rosu rosie красный крас " +
			"czerwone cervene cerveno rott encarnado encarnada puna ",
		3: " 橙 주황 πορτοκαλι помаранчевий оранжевий narancast oranzen pomaranczowo pomaranczowy pomaranczowa oranje " +
			"oranzova oranzovy laranja oranssi narancs turuncu portocaliu оранжевый " +
			"pomaranczowe oranzove oranzovo narancssarga anaranjado anaranjada naranjo ",
		4: " 黄 黃 노랑 황 κιτρινο κίτρινο жовтий zut zuta rumen rumena zolto желто zolty zolta geel zluta zluty gul gult " +
			"amarelo amarela keltainen sarga sari galben желтый жёлтый " +
			"zolte zlute zluto kelta ",
		5: " 緑 绿 綠 초록 녹 πρασινο πράσινο зелений zelen zielono зелено zielony zielona groen zelena zeleny gron gront gronn " +
			"vihrea zold yesil зеленый зелёный " +
			"zielone zelene zeleno gront viher ",
		6: " 青 蓝 藍 파랑 청 μπλε синій plav plava niebiesko сине niebieski niebieska blauw modra modry bla blatt sininen kek " +
			"mavi albastru albastra синий син " +
			"niebieskie modre modro sini ",
		7: " 紫 보라 μωβ фіолетовий ljubicast vijolicen fioletowo fioletowy fioletowa paars fialova fialovy lilla roxo " +
			"roxa violetti mor фиолетовый " +
			"fioletowe fialove fialovo fiolett violetta ibolya violetto violetta liila eflatun mov lilas purpura ",
		8: " 灰 회 회색 γκρι сірий siv siva szaro серо szary szara grijs seda sedy gra gratt cinza cinzento harmaa szurke " +
			"gri серый " +
			"szare sede sedo ",
		9: " 白 흰 백 흰색 λευκο ασπρο білий bijel bijela bel bela bialo бело bialy biala wit bila bily vit vitt hvid hvit " +
			"branco branca valkoinen feher beyaz alb alba белый бел " +
			"biale bile bilo valko ",
		10: " 桃 粉 분홍 ροζ рожевий rozowy rozowa roze ruzova lyserod vaaleanpunainen розовый " +
			"rozowe rozowo ruzovy ruzove rozsaszin rozsaszinu roosa pinkki pembe roz rosado rosada ",
		11: " turkusowy turkusowa turkusowe tyrkysova tyrkysovy turkos turkoois turkoosi turkiz turkuaz turcoaz ",
		12: " gull guld goud zloty zlota altin kulta arany ",
		13: " srebrny srebrna zilver solv hopea ezust gumus stribrna stribrny ",
		14: " przezroczysty kleurloos " +
			"pruhledny pruhledna farblos farvelos seffaf attetszo kirkas ",
	}
}
