package values

import (
	"contralay/model/file/schema"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// The screens of this family beside that of a record.
const (
	ItemsKind desk.Kind = "list of values"
)

const gone = "What this page was about is gone. Esc goes back"

// RecordPage is one record: a row for each key, then the tables in it.
func RecordPage(m *desk.Model, w int, of string) desk.Page {
	s, ok := find(m.H, of)
	t, known := schema.Find(s.at.Table())
	if !ok || !known {
		return desk.Page{Empty: gone}
	}
	at := s.at
	p := desk.Page{Lines: []string{words.Capital(title(m.H, at)) + ": everything the file holds of it. Press . to leave a value out."}}
	if serial := serialOf(m.H, at); serial != "" {
		p.Lines = []string{words.Capital(title(m.H, at)) + ". This changes the record of serial " + serial + "."}
	}
	for _, k := range t.Keys {
		if at.Table() == "rules" {
			p.Rows = append(p.Rows, ruleRow(m, k, w))
			continue
		}
		p.Rows = append(p.Rows, keyRow(m, at, k, w))
	}
	for _, in := range t.Tables {
		p.Rows = append(p.Rows, tableRow(m, at, in, w))
	}
	switch {
	case !t.One:
		p.Rows = append(p.Rows, removeRow(m, at))
	case isLine(m.H, at) && !schema.Has(m.H, at):
		k := schema.Key{Name: at.Last().Table, Kind: schema.KindTable}
		p.Rows = append(p.Rows, desk.Row{Key: "none", Text: "nothing: say so", Does: "take",
			Detail: "Enter writes down that there is nothing to say. Left out, it is not known",
			Enter:  func(m *desk.Model) { refuse(m, put(m, at.Up(), k, map[string]any{})) }})
	}
	if at.Table() == "rules" {
		p.Lines = []string{"Limits and habits of this shop. What is left out goes by its default."}
		p.Lines = append(p.Lines, effectLines(m, &p, w)...)
	}
	return p
}
