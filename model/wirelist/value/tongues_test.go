package value

import (
	"strings"
	"testing"
)

// A colour is the same in the tongues of Europe, in the forms that their words take beside "wire" and alone.
func TestColoursOfManyTongues(t *testing.T) {
	t.Parallel()
	for _, row := range [][2]string{
		{"orange", "orange|oransje|appelsin|appelsinfarvet|brandgul|oranžová|oranžový|oranžové|oranžovo|oranzowy|" +
			"pomarańczowy|oranssi|narancs|narancssárga|oranje|naranja|laranja|cor-de-laranja|arancio|arancione|" +
			"arancia|portocaliu|narančasta|oranžna|turuncu|помаранчевий|оранжевый|πορτοκαλί"},
		{"yellow", "gul|gult|gule|žlutá|žlutý|żółty|keltainen|keltanen|kelt|sárga|geel|gele|amarelo|giallo|galben|žuta|" +
			"rumena|sarı|желтый"},
		{"black", "svart|svarte|sort|sorte|černá|černý|czarny|musta|fekete|zwart|zwarte|preto|nero|negru|crna|črna|" +
			"siyah|noir"},
		{"brown", "brun|brunt|brune|hnědá|hnědý|hnědé|brązowy|brąz|ruskea|rusk|barna|bruin|bruine|castanho|marrom|" +
			"marrone|maro|smeđa|rjava|kahverengi"},
		{"red", "rød|rødt|røde|röd|röda|rött|červená|červený|rudá|czerwony|punainen|pun|piros|vörös|rood|rode|" +
			"vermelho|rosso|roșu|roşu|crvena|rdeča|kırmızı"},
		{"green", "grønn|grønt|grønne|grøn|grön|gröna|grönt|zelená|zelený|zielony|vihreä|vihr|zöld|groen|groene|verde|" +
			"zelena|yeşil"},
		{"blue", "blå|blått|blåt|modrá|modrý|niebieski|sininen|kék|blauw|blauwe|azul|blu|albastru|plava|modra|mavi"},
		{"violet", "fiolett|lilla|violett|violet|fialová|fialový|fioletowy|violetti|vio|lila|ibolya|paars|paarse|roxo|" +
			"roxa|viola|mov|ljubičasta|vijolična|mor|purppura|purpur|purper"},
		{"grey", "grå|grått|gråt|šedá|šedý|sivá|szary|harmaa|szürke|grijs|grijze|cinza|cinzento|grigio|gri|siva"},
		{"white", "hvit|hvitt|hvite|hvid|hvidt|vit|vitt|vita|bílá|bílý|biały|valkoinen|valk|fehér|wit|witte|branco|" +
			"bianco|alb|bijela|bela|beyaz"},
		{"pink", "rosa|lyserød|růžová|růžový|różowy|vaaleanpunainen|rózsaszín|pinkki|roze|cor-de-rosa|roz|roza|pembe"},
		{"light blue", "lyseblå|lys blå|lyse blå|ljusblå|světle modrá|světlemodrá|světlomodrá|jasnoniebieski|jasny niebieski|" +
			"błękitny|vaaleansininen|vaalean sininen|világoskék|lichtblauw|azul claro|azzurro|albastru deschis|" +
			"svijetloplava|svetlo modra|açık mavi"},
		{"dark blue", "mørkeblå|mørk blå|mörkblå|tmavě modrá|tmavomodrá|tmavomodrý|ciemnoniebieski|granatowy|tummansininen|" +
			"tumman sininen|sötétkék|donkerblauw|azul escuro|blu scuro|albastru închis|tamnoplava|temno modra|" +
			"koyu mavi|lacivert"},
		{"light green", "lysegrønn|lysegrøn|ljusgrön|světle zelená|jasnozielony|vaaleanvihreä|világoszöld|lichtgroen|" +
			"verde claro|verde chiaro"},
		{"dark green", "mørkegrønn|mørkegrøn|mörkgrön|tmavě zelená|ciemnozielony|tummanvihreä|sötétzöld|donkergroen|" +
			"verde escuro|verde scuro"},
	} {
		for word := range strings.SplitSeq(row[1], "|") {
			if c, ok := ParseColour(word, ""); !ok || c.String() != row[0] {
				t.Errorf("%q is %q (%v), want %q", word, c, ok, row[0])
			}
		}
	}
}
