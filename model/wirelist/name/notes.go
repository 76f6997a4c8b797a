package name

import (
	"strings"

	"contralay/model/wirelist/value"
)

// Loose finds the words shielded and twisted in any note.
func Loose(note string) (g value.Gauge) {
	for _, t := range value.Scan(value.Fold(note)) {
		if t.Kind == 'a' {
			g.Cable(t.Text)
		}
	}
	return g
}

// Partners reads "pair with 105", "twisted with 105 and 106", "paired 105", "verdrillt
// mit 12": the ids behind the word "with". Nothing else may stand there.
func Partners(note string) []string {
	f := strings.Fields(value.Fold(note))
	own := strings.Fields(note)
	for i, w := range f {
		if w != "with" && w != "w/" && w != "mit" && w != "avec" && w != "con" || i == 0 || i+1 == len(f) {
			continue
		}
		switch f[i-1] {
		case "pair", "paired", "twisted", "twist", "shielded", "triple", "paar", "gepaart", "verdrillt", "paire", "torsade", "par",
			"trenzado", "coppia", "intrecciato":
		default:
			return nil
		}
		var ids []string
		for k := i + 1; k < len(f) && k < len(own); k++ {
			switch strings.TrimRight(f[k], ".:") {
			case "pos", "position", "no", "nr", "row", "line", "zeile", "item", "and", "und", "et", "y", "e", "&", "+", "wire", "wires",
				"ader":
			default:
				for id := range strings.FieldsFuncSeq(own[k], func(r rune) bool { return r == ',' || r == '&' || r == '+' }) {
					ids = append(ids, id)
				}
			}
		}
		return ids
	}
	return nil
}
