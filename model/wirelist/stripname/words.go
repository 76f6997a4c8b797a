package stripname

import "strings"

// isStrip holds the words for a strip of terminals, folded: those that mean nothing else. Common words of each language, from memory,
// no source.
var isStrip = set(
	"klemmleiste|klemmenleiste|klemmenblock|klemmblock|klemmreihe|klemmenreihe|reihenklemmen|reihenklemme|anschlussleiste|lusterklemme",
	"bornier|borniers|regletero|regleteros|regleta|regletas|bornero|borneros|bornera|borneras|morsettiera|morsettiere",
	"klemmenstrook|klemmenrij|klemmenblok|klemstrook|klemmenlijst|kroonsteen|kroonsteentje|rijgklem|rijgklemmen",
	"plint|plinten|kopplingsplint|anslutningsplint|radplint|plintrad|kopplingslist|klemlist|sockerbit",
	"klemraekke|klemrække|klemraekken|rekkeklemme|rekkeklemmer|raekkeklemme|rækkeklemme|raekkeklemmer|rækkeklemmer|koblingslist",
	"klemmerekke|riviliitin|riviliittimet|rivi|liitinrima|kytkentarima|listwa|listwy|kostka|svorkovnice|svorkovnica|svorkovnici|reglete",
	"sorkapocs|sorkapocsok|sorozatkapocs|klemens|klemensler|regleti|borneira|barra de bornes|regua|reguas|rigleta|sir de cleme",
	"клеммник|клеммная колодка|клемма|klemnik|tagstrip|terminalstrip|terminalblock|chocblock",
)

// phrases are the words for one that mean something else each by itself.
var phrases = []string{"terminal strip", "terminal block", "terminal rail", "terminal row", "tag strip", "tag board", "tagstrip",
	"barrier strip", "barrier block", "choc block", "choc bloc", "choccy block", "connector strip", "screw strip", "connection strip",
	"regua de bornes", "regua de bornas", "regua de terminais", "barra de bornes", "bloque de terminales", "tira de terminales",
	"bloc de jonction", "barrette de jonction", "barrette a bornes", "bloco de terminais", "sir de cleme", "клеммная колодка"}

// between are the words that stand between the word for a strip and its name: "listwa zaciskowa X2", "regleta de bornas X1".
var between = set("zaciskowa|zaciskowy|rzedowa|de|da|di|do|bornas|bornes|bornos|terminales|terminais|conexion|conexiones|morsetti|cleme",
	"nr|no|nummer|strip|block|terminal|grubu|rada")

// terminals are the words for what a strip is made of, behind its name: "X1 terminals".
var terminals = set("terminals|terminal|klemmen|klemmer|klemmor|bornas|bornes|morsetti|zaciski|svorky|liittimet|strip|kapcsok|klemmar")

// before are the words that lead to a strip where something else goes: a title with one before the strip tells a cable, "loom to
// bornier X1".
var before = set("to|from|on|at|the|of|for|via|and|with|in|into|a|au|du|de|del|al|vers|zu|zur|zum|von|vom|an|am|auf|nach|und|mit|til",
	"till|fra|fran|pa|och|og|med|naar|van|met|en|op|aan|na|do|z|ze|k|od|a|alla|dalla|della|sulla|e|y|et|per|ate|ao|da|para|hasta|desde")

// verbs make a sentence of a title.
var verbs = set("is|are|was|were|has|have|had|goes|go|gets|sits|stays|will|must|can|should|needs|ist|sind|war|hat|haben|wird|muss|est|sont",
	"sera|es|son|esta|estan|tiene|sono|ha|hanno|zijn|heeft|wordt|ar|har|finns|er|on|ovat|sa|maja|jsou|tem|foi")

// set makes a look-up of words set off by strokes.
func set(lines ...string) map[string]bool {
	all := map[string]bool{}
	for _, l := range lines {
		for w := range strings.SplitSeq(l, "|") {
			all[w] = true
		}
	}
	return all
}

// Is reports whether a folded word is one for a strip of terminals.
func Is(word string) bool { return isStrip[word] }
