package lists

import (
	"fmt"
	"strings"

	"contralay/model/wirelist"
	wirelistname "contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
	"contralay/ui/draw"
)

// The columns of a table, and what each can mean.

// columnRows are the columns of a table, each under its number.
func columnRows(m *desk.Model, f *wirelist.Found, w int) (rows []desk.Row) {
	for i := range f.Reading().Block.Cols {
		if r := columnRow(m, f, i, w); r.Key != "" {
			rows = append(rows, r)
		}
	}
	return desk.Numbered(rows)
}

// columnRow says what a column means, with what stands in it; without a key for a column of nothing.
func columnRow(m *desk.Model, f *wirelist.Found, i, w int) desk.Row {
	c := f.Reading().Block.Cols[i]
	samples := samplesOf(f, i)
	if c.Head == "" && len(samples) == 0 {
		return desk.Row{}
	}
	key := f.ColumnKey(i)
	said, byHand := f.Said.Columns[key]
	if !byHand {
		said = c.Field
	}
	is := string(said)
	if said != c.Field {
		is += ", here " + string(c.Field) // nothing in this table takes what was said
	}
	change := func(m *desk.Model, to string) {
		say(m, f, fmt.Sprintf("column %s is %s", key, to), func(s *wirelistname.TableSaid) {
			if s.Columns == nil {
				s.Columns = map[string]wirelistname.Field{}
			}
			s.Columns[key] = wirelistname.Field(to)
		})
	}
	text := fmt.Sprintf("column %s  is  %-11s %s", draw.Fit(key, min(18, max(8, w-50)), m.Cfg.ASCII), is,
		strings.Join(samples, " · "))
	of := f.Key.String()
	return desk.Row{Key: fmt.Sprintf("column %d", i), Text: text,
		Detail: "+ - changes what it means, Enter lists the meanings. keep leaves it as text in a note",
		Step: func(m *desk.Model, by int) {
			v, _ := words.Around(allFields(), string(said), by)
			change(m, v)
		},
		Enter: func(m *desk.Model) { m.Open(meaningScreen(of, key, string(said), change)) }}
}

// mostSamples is how many cells show what a column holds (no source).
const mostSamples = 3

// samplesOf are the first cells of a column with something in them.
func samplesOf(f *wirelist.Found, i int) (out []string) {
	for _, r := range f.Block.Rows {
		if i < len(r.Cells) && r.Cells[i] != "" && !shape.IsText(r) {
			if out = append(out, r.Cells[i]); len(out) == mostSamples {
				break
			}
		}
	}
	return out
}

func allFields() (all []string) {
	for _, f := range wirelistname.Fields() {
		all = append(all, string(f))
	}
	return all
}

// meaningScreen lists what a column can mean.
func meaningScreen(of, key, now string, change func(m *desk.Model, to string)) desk.Screen {
	return desk.Screen{Kind: desk.KindChoice, Title: "what column " + key + " means", Page: func(m *desk.Model, _ int) desk.Page {
		if _, f := tableOf(m, of); f == nil {
			return desk.Page{Empty: "This table is not read any more. Esc goes back"}
		}
		p := desk.Page{Lines: []string{"What does column " + key + " mean? A number and Enter takes a row."}}
		var rows []desk.Row
		for n, f := range wirelistname.Fields() {
			in := "  "
			if string(f) == now {
				in, p.Start = "= ", n
			}
			rows = append(rows, desk.Row{Key: string(f), Text: fmt.Sprintf("%s%-12s %s", in, f, fieldSays[f]), Detail: "Enter takes it",
				Does: "takes it", Enter: func(m *desk.Model) {
					m.Back()
					change(m, string(f))
				}})
		}
		p.Rows = desk.Numbered(rows)
		return p
	}}
}

// fieldSays are the meanings of columns in words.
var fieldSays = map[wirelistname.Field]string{
	wirelistname.FieldWire: "the id of the wire", wirelistname.FieldFrom: "connector or device at one end",
	wirelistname.FieldFromPin: "cavity at that end", wirelistname.FieldTo: "connector or device at the other end",
	wirelistname.FieldToPin: "cavity at the other end", wirelistname.FieldRun: "both ends in one cell",
	wirelistname.FieldConnector: "connector of the cavity in the row", wirelistname.FieldPin: "cavity",
	wirelistname.FieldSignal: "name of the net", wirelistname.FieldGauge: "size of the wire",
	wirelistname.FieldSpec:   "specification of the wire",
	wirelistname.FieldColour: "colour", wirelistname.FieldStripe: "colour of the stripe", wirelistname.FieldLength: "length",
	wirelistname.FieldCurrent: "current", wirelistname.FieldUnit: "unit of the column before it", wirelistname.FieldFuse: "fuse",
	wirelistname.FieldNote: "note", wirelistname.FieldCable: "pair, cable or shield", wirelistname.FieldContact: "size of the contact",
	wirelistname.FieldVia: "cavity that the wire goes through", wirelistname.FieldDevicePin: "cavity in the device of the heading",
	wirelistname.FieldKeep:   "kept as text in the note",
	wirelistname.FieldIgnore: "not read",
}
