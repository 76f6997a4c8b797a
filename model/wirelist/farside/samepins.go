package farside

import (
	"slices"
	"strings"

	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/words"
)

// SamePins gives the wires of one plug the cavities of another that a sentence below them says they go to, each the one of its own number.
//
//	1 = supply   red
//	2 = return   black
//	Both ends have the same pin numbers (the column plug is SC7).
//
// The sentence names one other plug by its designator, and none of those wires says itself where it goes.
func SamePins(im *draft.Importer, tables []table.Table) {
	for _, t := range tables {
		for _, r := range t.Rows {
			_, text := r.Filled()
			if !shape.IsText(r) || !saysSamePins(text) {
				continue
			}
			at := table.Place{File: t.File, Sheet: t.Sheet, Row: r.Line}
			all := wiresAbove(im.Items, at)
			if len(all) == 0 {
				continue
			}
			plug := otherPlug(text, all[0].From.Term.ID)
			if plug == "" {
				im.Say(report.Warn, "a text that says that pins are the same", at, text, "no plug is sure in it; no far ends made")
				continue
			}
			for _, it := range all {
				it.To = draft.End{Text: plug, Pin: it.From.Pin}
			}
			near := all[0].From.Term.ID
			im.Say(report.Warn, "far ends that a text says", at, text, "each wire of "+near+" goes to the same cavity of "+plug)
		}
	}
}

// wiresAbove are the wires of the table right above a row; nil where they start at several connectors, or one of them says where it goes.
func wiresAbove(items []*draft.Item, at table.Place) (all []*draft.Item) {
	var last *draft.Item
	for _, it := range items {
		if it.Place.File == at.File && it.Place.Sheet == at.Sheet && it.Place.Row < at.Row &&
			(last == nil || it.Place.Row >= last.Place.Row) {
			last = it
		}
	}
	for _, it := range items {
		switch {
		case last == nil || it.Place.File != at.File || it.Place.Sheet != at.Sheet || it.Block != last.Block:
		case it.From.Term == nil || it.From.Term != last.From.Term || it.To != (draft.End{}):
			return nil
		case it.From.Pin != "" && it.State == name.Used:
			all = append(all, it)
		}
	}
	return all
}

// otherPlug is the one designator in a text that is not the plug itself, with a word for a plug in the text; "" where there is none,
// or several.
func otherPlug(text, own string) (plug string) {
	plugWord := false
	for w := range strings.FieldsFuncSeq(text, func(c rune) bool { return strings.ContainsRune(" ,;:().\t", c) }) {
		f := table.Fold(w)
		plugWord = plugWord || name.IsConnectorWord(f)
		if !name.IsDesignator(w) || w != strings.ToUpper(w) || strings.EqualFold(w, own) || w == plug {
			continue
		}
		if plug != "" {
			return ""
		}
		plug = w
	}
	if !plugWord {
		return ""
	}
	return plug
}

// saysSamePins reports whether a text says that wires have the same cavity at both ends, all of them.
func saysSamePins(text string) bool {
	f := table.Fold(text)
	if !slices.ContainsFunc(samePins(), func(s string) bool { return strings.Contains(f, s) }) {
		return false
	}
	return !slices.ContainsFunc(strings.Fields(f), func(w string) bool {
		w = strings.Trim(w, ",;:().")
		return words.IsExcept(w) || w == "not" || w == "nicht" || w == "non" || w == "pas" || w == "no" || w == "nie" || w == "niet"
	})
}

// samePins are the ways to say so. Common words, no source.
func samePins() []string {
	return []string{"same pin number", "same pins", "same pin at", "same pin on", "same cavit", "same numbers at both ends", "pin for pin",
		"pin to pin", "gleiche pin", "gleichen pin", "selben pin", "gleiche klemmen", "pin auf pin", "memes broches", "meme broche",
		"broche a broche", "broche pour broche", "stessi pin", "stesso pin", "pin a pin", "mismos pines", "mismo pin", "pin por pin",
		"zelfde pin", "pin op pin", "te same piny", "samma stift", "samme pin", "mesmos pinos", "stejne piny"}
}
