package doingword

import (
	"slices"
	"strings"
	"unicode"

	"contralay/model/wirelist/table"
)

// participles are forms of verbs that are said of a wire; beside a noun they may be a part of a name, "isolated ground".
var participles = strings.Fields(`tied coiled rolled taped tucked folded stowed cut trimmed clipped capped insulated isolated
	sealed sleeved looped spliced tapped soldered crimped routed bundled strapped zip-tied ziptied heatshrunk heat-shrunk
	shrunk stripped bridged jumpered twisted isole isolee aislado aislada isolato isolata isolado isolada isoliert geisoleerd
	isolerad isoleret isolert zaizolowany zaizolovany eristetty fixe`)

// done are such forms in languages that have them behind the noun, and orders of one form.
var done = strings.Fields(`liegt aufgerollt aufgewickelt abgeklebt zuruckgebunden abgeschnitten gekurzt verklebt eingerollt
	abzweigen abgezweigt anzapfen angezapft durchschleifen durchgeschleift verlegt umgelegt enroule enroulee coupe coupee
	attache attachee replie repliee plie pliee scotche deriver derive repiquer enrollado enrollada cortado cortada atado atada
	plegado recogido recogida derivar empalmar arrotolato arrotolata tagliato tagliata legato legata ripiegato ripiegata
	derivare giuntare enrolado enrolada cortado amarrado dobrado dobrada emendar opgerold afgeknipt vastgebonden teruggebonden
	afgeplakt aftakken afgetakt doorlussen doorgelust weggewerkt upprullad avklippt hoprullad bortkapad oprullet afklippet
	kveilet zwiniety uciety zawiniety svinuty ustrizeny kelattu`)

// doing are verbs as an order has them first; many are nouns as well.
var doing = strings.Fields(`tie coil roll tape tuck fold stow cut trim clip cap insulate isolate seal loop splice tap solder
	crimp route bundle strap strip bridge leave keep fit run take wrap shrink branch split join connect check lies lying goes
	hidden hangs parked`)

// orders are those of them that no device is called after: "coil on plug" is one, "run on" a switch.
var orders = strings.Fields(`tie tape tuck fold insulate splice tap solder crimp route strip bridge branch split join connect leave keep`)

// behind are the small words that stand behind such an order.
var behind = strings.Fields(`up back off away down in out on to into under behind along with for from at over round the it
	both each this`)

// places are the words that a text begins with that says where a loose end lies.
var places = strings.Fields(`behind under beside above below near inside at in on along hinter unter neben uber im am bei in
	derriere sous dans pres detras debajo bajo junto en dietro sotto dentro vicino atras debaixo perto em achter onder naast
	in bij bakom under vid i bag ved za pod przy`)

// Says reports whether a text of two words and more says what is done with a wire, "splice for the horn", "aftakken voor de claxon".
func Says(text string) bool {
	w := words(text)
	if len(w) < 2 {
		return false
	}
	for i, one := range w {
		said := len(w) > 2 && slices.Contains(participles, one) && (i+1 == len(w) || slices.Contains(behind, w[i+1]))
		if said || slices.Contains(done, one) {
			return true
		}
	}
	return len(w) > 2 && slices.Contains(orders, w[0]) && slices.Contains(behind, w[1])
}

// SaysOfLooseEnd reports whether a text of two words and more says what is done with a loose end, or where it lies: "cut back", "behind
// the dash".
func SaysOfLooseEnd(text string) bool {
	w := words(text)
	return len(w) > 1 && (slices.Contains(doing, w[0]) || slices.Contains(places, w[0]) || slices.ContainsFunc(w, func(one string) bool {
		return slices.Contains(done, one) || slices.Contains(participles, one)
	}))
}

// words are the folded words of a text, without the signs round them.
func words(text string) []string {
	return strings.FieldsFunc(table.Fold(text), func(r rune) bool { return !unicode.IsLetter(r) && !unicode.IsDigit(r) && r != '-' })
}
