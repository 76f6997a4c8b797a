package words

import "strings"

// noCable are the words of a heading for wires that are in no cable, folded. From memory, no source.
var noCable = []string{"no cable", "without cable", "without a cable", "not in a cable", "not in cable", "outside the cable",
	"single wires", "single cores", "single conductors", "loose wires", "individual wires", "separate wires", "not cabled",
	"ohne kabel", "kein kabel", "keine kabel", "einzeladern", "einzelleiter", "einzelleitungen", "einzeldrahte", "lose adern",
	"sans cable", "fils seuls", "fils libres", "fils isoles", "hors cable", "sin cable", "hilos sueltos", "cables sueltos",
	"fuera del cable", "senza cavo", "fili singoli", "fili sciolti", "fuori cavo", "zonder kabel", "geen kabel",
	"losse draden", "losse aders",
	"sem cabo", "fios soltos", "fora do cabo", "bez kabla", "pojedyncze przewody", "luzne przewody", "bez kabelu", "jednotlive vodice",
	"utan kabel", "ingen kabel", "enkelledare", "losa ledningar", "losa ledare", "uden kabel", "uten kabel", "enkeltledere",
	"lose ledninger", "ilman kaapelia", "ei kaapelia", "irtojohdot", "yksittaiset johtimet", "kabel nelkul", "tek damar"}

// SaysNoCable reports whether a folded text says that the wires below it are in no cable.
func SaysNoCable(folded string) bool {
	for _, p := range noCable {
		if strings.Contains(folded, p) {
			return true
		}
	}
	return false
}
