package value

import "strings"

// otherColourWord is the hue that one folded word names in one of further languages: Polish, Dutch, Czech,
// Swedish, Danish and Norwegian, Portuguese, Finnish, Hungarian, Turkish, Romanian, Russian. From
// memory, no source. A shop says its own words in a recipe.
func otherColourWord(word string) (int, bool) {
	for hue, words := range [15]string{
		0:  " czarny czarna zwart cerna cerny svart sort preto preta musta fekete siyah negru neagra черный чёрный черн ",
		1:  " brazowy brazowa bruin hneda hnedy brunt castanho castanha marrom ruskea barna kahverengi maro коричневый кор ",
		2:  " czerwony czerwona rood cervena cerveny rod rodt vermelho vermelha punainen piros voros kirmizi rosu rosie красный крас ",
		3:  " pomaranczowy pomaranczowa oranje oranzova oranzovy laranja oranssi narancs turuncu portocaliu оранжевый ",
		4:  " zolty zolta geel zluta zluty gul gult amarelo amarela keltainen sarga sari galben желтый жёлтый ",
		5:  " zielony zielona groen zelena zeleny gron gront gronn vihrea zold yesil зеленый зелёный ",
		6:  " niebieski niebieska blauw modra modry bla blatt sininen kek mavi albastru albastra синий син ",
		7:  " fioletowy fioletowa paars fialova fialovy lilla roxo roxa violetti mor фиолетовый ",
		8:  " szary szara grijs seda sedy gra gratt cinza cinzento harmaa szurke gri серый ",
		9:  " bialy biala wit bila bily vit vitt hvid hvit branco branca valkoinen feher beyaz alb alba белый бел ",
		10: " rozowy rozowa roze ruzova lyserod vaaleanpunainen розовый ",
		14: " przezroczysty kleurloos ",
	} {
		if strings.Contains(words, " "+word+" ") {
			return hue, true
		}
	}
	return 0, false
}
