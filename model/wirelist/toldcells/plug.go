package toldcells

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/plugword"
	"contralay/model/wirelist/table"
)

// Below says of wires with a cavity and no connector which one a text above them names in passing, where no other reader finds it there:
//
//	roof rack, at the back, plug X2 (10 pole). sizes in mm2      X2
//	reading the grey 8 pole on the back                          8 pole
//	answers under your questions. It is P9, the round plug       P9
func (t *Told) Below(rows []table.Row) {
	of, last := "", -1
	for k := range t.Wires {
		w := &t.Wires[k]
		if w.Row > last+1 || last < 0 {
			for i := w.Row - 1; i > last; i-- {
				text := Text(rows[i].Cells)
				if name.SaysConnector(text) {
					of = ""
					break
				}
				if called := Plug(text); called != "" {
					of = called
					break
				}
			}
		}
		if last = w.Row; w.Of == "" && w.Pin != "" {
			w.Of = of
		}
	}
}

// Plug is the connector that a text names in passing, "" where it names none or several.
func Plug(text string) (of string) {
	w := strings.Fields(text)
	counted, word := "", false
	for i, s := range w {
		bare := table.Fold(strings.Trim(s, ",.;:()"))
		isWord := plugword.Is(bare) || bare == "don" || bare == "donet" // Swedish, from memory, no source
		word = word || isWord || name.CountWord(bare) == "cavities"
		if called := nextName(w, i); isWord && called != "" {
			if of != "" && of != called {
				return ""
			}
			of = called
		}
		if i > 0 && name.CountWord(bare) == "cavities" && strings.Trim(w[i-1], "0123456789") == "" && counted == "" {
			counted = w[i-1] + " " + strings.Trim(s, ",.;:()")
		}
	}
	if of != "" || !word {
		return of
	}
	for _, s := range w {
		if s = strings.Trim(s, ",.;:()"); name.IsDesignator(s) && strings.ToUpper(s) == s {
			if of != "" && of != s {
				return ""
			}
			of = s
		}
	}
	if of == "" {
		if of = phrase(text); of == "" {
			return counted
		}
	}
	return of
}

// phrase is the word for a plug with those before it in its piece of the text, "drawbar plug" of "drill, drawbar plug 12 way".
func phrase(text string) string {
	const most = 3 // words (no source)
	for part := range strings.FieldsFuncSeq(text, func(r rune) bool { return r == ',' || r == ';' || r == '.' || r == ':' }) {
		w := strings.Fields(part)
		for i, s := range w {
			if i == 0 && len(w) > 2 && len(w) <= most+2 && plugword.Is(table.Fold(s)) && !strings.ContainsAny(part, "0123456789()") {
				return strings.Join(w, " ") // "plug at the mast"
			}
			if i > 0 && i < most && plugword.Is(table.Fold(s)) && !strings.ContainsAny(part[:strings.Index(part, s)], "0123456789") {
				return strings.Join(w[:i+1], " ")
			}
		}
	}
	return ""
}

// nextName is the designator behind a word, or the word and a letter or number behind it, "plug R".
func nextName(w []string, i int) string {
	if i+1 >= len(w) || strings.ContainsAny(w[i], ",.;:") {
		return ""
	}
	switch s := strings.Trim(w[i+1], ",.;:()"); {
	case name.IsDesignator(s) && strings.ToUpper(s) == s:
		return s
	case len(s) == 1 && s[0] >= 'A' && s[0] <= 'Z':
		return strings.Trim(w[i], "(") + " " + s
	}
	return ""
}

// NamesPlug reports whether a text says that it is about a connector: by its name, a word for one, how many ways it has, or its pins.
func NamesPlug(text string) bool {
	if name.SaysConnector(text) || Plug(text) != "" {
		return true
	}
	for w := range strings.FieldsSeq(text) {
		w = table.Fold(strings.Trim(w, ",.;:()"))
		if plugword.Is(w) || name.IsPinWord(w) && w != "term" && w != "way" && w != "pole" && w != "kl" {
			return true
		}
	}
	return false
}
