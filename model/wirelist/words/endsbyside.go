package words

import "contralay/model/wirelist/name"

// endsBySide adds the headings of a word for an end and the letter or the number of a side, "Seite A", "Extremo 2". "Seite 1" is a page.
// Common words, from memory, no source.
func endsBySide(add func(f name.Field, lang string, words ...string)) {
	for lang, of := range map[string][]string{"de": {"seite", "ende"}, "fr": {"cote", "bout", "extremite"}, "es": {"lado", "extremo"},
		"it": {"lato", "capo", "estremita"}, "nl": {"zijde", "kant", "uiteinde"}, "sv": {"sida", "ande"}, "pl": {"strona", "koniec"},
		"cs": {"strana", "konec"}} {
		for _, w := range of {
			add(name.FieldFrom, lang, w+" a")
			add(name.FieldTo, lang, w+" b")
			if w != "seite" {
				add(name.FieldFrom, lang, w+" 1")
				add(name.FieldTo, lang, w+" 2")
			}
		}
	}
}
