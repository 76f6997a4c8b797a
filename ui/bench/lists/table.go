package lists

import (
	"fmt"
	"slices"
	"strings"

	"contralay/calc/query/why"
	"contralay/model/catalogue"
	"contralay/model/visible"
	"contralay/model/wirelist"
	wirelistname "contralay/model/wirelist/name"
	"contralay/model/wirelist/table"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// One table of a list a page: what it is read as, what its columns mean, and its rows beside what each becomes.

// tableOf is the table of a name in the list that is open.
func tableOf(m *desk.Model, of string) (*importing, *wirelist.Found) {
	in := opened(m).list
	if in == nil {
		return nil, nil
	}
	k := slices.IndexFunc(in.Found, func(f wirelist.Found) bool { return f.Key.String() == of })
	if k < 0 {
		return in, nil
	}
	return in, &in.Found[k]
}

// say takes in what a person says about a table: the wires follow at once.
func say(m *desk.Model, f *wirelist.Found, told string, change func(s *wirelistname.TableSaid)) {
	in := opened(m).list
	n := *in
	n.Before = in
	n.Recipe = in.Recipe.Say(f.Key, f.Alike, change)
	opened(m).list = readList(m, n)
	m.Tell(told + ": " + makes(opened(m).list))
}

// makes says what a list makes.
func makes(in *importing) string {
	if in.Err != nil {
		return "it makes no harness yet"
	}
	return words.Plural(len(in.H.Terminations), "end", "ends") + ", " + words.Plural(len(in.H.Wires), "wire", "wires")
}

// readAs is what a table is taken for.
func readAs(f *wirelist.Found) string {
	if f.Said.LeftOut {
		return "left out"
	}
	if f.Joined() {
		return "one with the table above it"
	}
	if f.Wires() {
		return f.Reading().Kind
	}
	return "no wires: " + f.Reading().Kind
}

// TablePage is one table of the list that is open.
func TablePage(m *desk.Model, w int, of string) desk.Page {
	in, f := tableOf(m, of)
	if f == nil {
		return desk.Page{Empty: "This table is not read any more. Esc goes back to the list"}
	}
	p := desk.Page{Lines: []string{f.Key.String(), "The list makes " + makes(in) + "."}}
	if in.Err != nil {
		p.Lines[1] = in.Err.Error() + "."
	}
	cols := columnRows(m, f, w)
	for _, r := range readingRows(f) {
		if len(cols) > 0 {
			r.Field = cols[0].Field // digits go to a column from here too
		}
		p.Rows = append(p.Rows, r)
	}
	if r := connectorRow(in, f); r.Key != "" {
		p.Rows = append(p.Rows, r)
	}
	if f.Below {
		p.Rows = append(p.Rows, joinRow(f))
	}
	if len(cols) > 0 {
		p.Rows = append(append(p.Rows, desk.Row{Text: "its columns: a number and Enter goes to one", Heads: true}), cols...)
	}
	p.Rows = append(p.Rows, listRows(m, in, f, w)...)
	return p
}

// readingRows are what the table is read as, and what it is taken for next.
func readingRows(f *wirelist.Found) []desk.Row {
	choose := func(m *desk.Model, k int) {
		say(m, f, "read as "+f.Names[k], func(s *wirelistname.TableSaid) {
			s.LeftOut, s.GoesOn = false, false
			if s.Reading = f.Names[k]; k == 0 {
				s.Reading = ""
			}
		})
	}
	n := len(f.Readings)
	text := "read as    " + readAs(f)
	if !f.Said.LeftOut && !f.Joined() {
		text += share(f, f.Chosen)
	}
	now := desk.Row{Key: "reading", Text: text, Detail: ". leaves the table out. Evidence: " + strings.Join(f.Reading().Because, "; "),
		Why:  shareWhy(f, f.Chosen),
		Drop: func(m *desk.Model) { leaveOut(m, f) }, Steps: "next best", Step: func(m *desk.Model, by int) {
			if n < 2 {
				m.Refuse("there is no other way to read it. Say what its columns mean")
				return
			}
			choose(m, ((f.Chosen+by)%n+n)%n)
		}}
	rows := []desk.Row{now}
	if n > 1 {
		k := (f.Chosen + 1) % n
		rows = append(rows, desk.Row{Key: "next reading", Text: "  or       " + f.Names[k] + share(f, k),
			Detail: "Evidence: " + strings.Join(f.Readings[k].Because, "; "), Why: shareWhy(f, k), Does: "reads it so",
			Enter: func(m *desk.Model) { choose(m, k) }})
	}
	return rows
}

// share is how much of a table a reading explains.
func share(f *wirelist.Found, k int) string {
	return fmt.Sprintf(", %.0f %%", 100*min(f.Readings[k].Score, 1))
}

// shareWhy says how that share is made.
func shareWhy(f *wirelist.Found, k int) []desk.Reason {
	return []desk.Reason{{Made: func() (why.Why, bool) {
		says := "how well the cells fit what each column is taken for; a column that is only kept as text counts against it: " +
			strings.Join(f.Readings[k].Because, "; ")
		if !f.Readings[k].Wires {
			says = "how plainly its headings say that it is no table of wires: a set figure for each kind of table"
		}
		return why.Stated("share of the table that is explained, read as "+f.Names[k], says, min(f.Readings[k].Score, 1), why.Percent,
			catalogue.Origin{Source: "weights of this program", Standing: catalogue.Practice}), true
	}}}
}

// connectorRow names the connector whose cavities the table lists; without a key where its rows name it.
func connectorRow(in *importing, f *wirelist.Found) desk.Row {
	b := f.Reading().Block
	if !f.Wires() || !b.IsPinTable() && !b.Has(wirelistname.FieldVia) || b.Has(wirelistname.FieldConnector) || b.InCells() {
		return desk.Row{}
	}
	now := f.Said.Connector
	text := now
	if text == "" {
		text = "as the list says"
		if is := connectorOf(in, f); is != "" {
			text += ": " + is
		}
	}
	return desk.Row{Key: "connector", Text: "connector  " + text,
		Detail: "Enter types its name. The name of another table's connector joins the two",
		Field: &desk.Field{Label: "connector", Value: now, Set: func(m *desk.Model, text string) error {
			if says, allowed := visible.Fault(text, false); says != "" {
				return fmt.Errorf("the name %s. Type %s", says, allowed)
			}
			says := "connector " + text
			if text == "" {
				says = "connector as the list says"
			}
			say(m, f, says, func(s *wirelistname.TableSaid) { s.Connector = text })
			return nil
		}}}
}

// connectorOf is the connector that a table's cavities became: the one that most of its wires end at; "" where they became none.
func connectorOf(in *importing, f *wirelist.Found) (id string) {
	const looked = 200 // rows; the first say it
	ends := map[string]int{}
	for _, r := range f.Block.Rows[:min(len(f.Block.Rows), looked)] {
		for _, i := range in.rows.wires[table.Place{File: f.Place.File, Sheet: f.Place.Sheet, Row: r.Line}] {
			for _, end := range []string{in.H.Wires[i].From.V, in.H.Wires[i].To.V} {
				if t, _, ok := strings.Cut(end, ":"); ok {
					if ends[t]++; ends[t] > ends[id] || ends[t] == ends[id] && t < id {
						id = t
					}
				}
			}
		}
	}
	return id
}

// joinRow says that the table is one with the table above it.
func joinRow(f *wirelist.Found) desk.Row {
	text, does, says := "joined     no", "joins", "one with the table above it"
	if f.Joined() {
		text, does, says = "joined     to the table above it", "parts", "a table of its own"
	}
	turn := func(m *desk.Model) {
		if f.Apart && !f.Said.GoesOn {
			m.Refuse("its headings are other ones than those of the table above it. Give both one connector instead")
			return
		}
		say(m, f, says, func(s *wirelistname.TableSaid) { s.GoesOn = !s.GoesOn })
	}
	return desk.Row{Key: "joined", Text: text, Does: does,
		Detail: "Enter makes it one with the table above it on its sheet, or parts the two",
		Enter:  turn, Step: func(m *desk.Model, _ int) { turn(m) }}
}

// leaveOut leaves a table out, or takes it in again.
func leaveOut(m *desk.Model, f *wirelist.Found) {
	says := "table left out"
	if f.Said.LeftOut {
		says = "table taken in"
	}
	say(m, f, says, func(s *wirelistname.TableSaid) { s.LeftOut = !s.LeftOut })
}
