package endpins

import (
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
)

// Ends that are a connector with a table of its own and one of the cavities that the table names, with a blank between. A number behind a
// device may count devices, and a letter be its side: cavities have a name of some letters, or a pole.
//
//	Radio                      Amp
//	A6 | Ground | Amp GND      GND | Ground | seat bolt

// partOfTable parts those ends.
func partOfTable(im *draft.Importer) {
	for _, it := range im.Items {
		for _, e := range []*draft.End{&it.From, &it.To} {
			at := strings.LastIndexByte(e.Text, ' ')
			if e.Term != nil || e.Pin != "" || at < 1 || !isNamedCavity(e.Text[at+1:]) || titled(im, e.Text) {
				continue
			}
			of, pin := strings.TrimSpace(e.Text[:at]), e.Text[at+1:]
			if t := im.ByKey[name.Key(of)]; t == nil || !t.Titled || !has(t, pin) {
				continue
			}
			im.Say(report.Note, "a cavity behind its device", it.Place, e.Text, "its table has a cavity that is called so")
			e.Text, e.Pin = of, pin
		}
	}
}

// has reports whether the table of a connector names a cavity.
func has(t *draft.Term, pin string) bool {
	_, named := t.At[pin]
	return named
}

// isNamedCavity reports whether a word can be the name of a cavity and no number or letter that tells devices apart: "GND", "B+", "REM".
func isNamedCavity(w string) bool {
	const most = 8 // letters (no source)
	letters := strings.Trim(w, "+-0123456789")
	return len(w) > 1 && len(w) <= most && letters == strings.ToUpper(letters) && letters != "" &&
		(len(letters) > 1 || letters+"+" == w || letters+"-" == w)
}
