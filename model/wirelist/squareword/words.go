package squareword

import "strings"

// plain holds the words for mm² that mean nothing else behind a number, folded. From memory, no source.
var plain = set("kvadrat|kvadratare|kvadraten|kvadratmillimeter|kvadratmillimetre|kvadratmilimetr|kvadratmm|kvmm|quadratmillimeter",
	"quadratmm|mmq|qmm|kwadraat|kwadratmillimeter|kwadraatmillimeter|kwadrat|kwadraty|kwadratow|nelio|neliota|neliomm|neliomillimetri",
	"neliomillimetria|millimetriquadri|negyzetmillimeter|milimetrekare|sqmm|sqmms|кв.мм|квмм|квадрат|квадрата|квадратов")

// doubtful holds those that also mean something else.
var doubtful = set("sq|square|squares|squared|quadrat|quadri|quadro|quadrati|quadrato|carre|carres|cuadrado|cuadrados|quadrado|quadrados",
	"vierkant|vierkante|kvadratni|ctverecni|ctverecnich|kwadratowy|kwadratowe|kwadratowych|negyzet|kare|patrat|patrati|кв")

// mm holds the words for a millimetre.
var mm = set("mm|mms|millimeter|millimeters|millimetre|millimetres|milimetro|milimetros|millimetro|millimetri|milimetr|milimetry|milimetru",
	"millimetria|мм")

// joins holds the words between a millimetre and the word for its square: "4 mm au carré".
var joins = set("au|al|ao|im")

// begins holds the first bytes of all of them, large and small, and of the ending of "1,5er"; what is beyond ASCII may fold to any.
var begins = func() (all [256]bool) {
	for _, words := range []map[string]bool{plain, doubtful, mm, {"er": true}} {
		for w := range words {
			for _, first := range []string{w, strings.ToUpper(w)} {
				all[first[0]] = true
			}
		}
	}
	return all
}()

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
