package bench

import (
	"fmt"
	"path/filepath"
	"strings"

	"contralay/model"
	"contralay/model/compare"
	"contralay/model/wirelist"
	"contralay/ui/draw"
)

// Other people's wire lists, taken in on the bench: what each column means can be said, and
// nothing changes before the harness they make is taken.

// importing is a list that is open.
type importing struct {
	path   string
	tables []wirelist.Table
	recipe wirelist.Recipe
	unit   wirelist.LengthUnit
	cols   []wirelist.Column
	h      model.Harness
	rep    wirelist.Report
	err    error
	before *importing // as it was before the last thing said of it
}

// read makes the harness anew from what the columns mean by now.
func (m *Model) readList(in importing) *importing {
	in.recipe.Unit = in.unit
	recipe := &in.recipe
	in.cols = nil
	for _, t := range in.tables {
		in.cols = append(in.cols, wirelist.Columns(t, recipe)...)
	}
	name := strings.TrimSuffix(filepath.Base(in.path), filepath.Ext(in.path))
	in.h, in.rep, in.err = wirelist.Import(in.tables, wirelist.Options{Recipe: recipe, Unit: in.unit, Catalogue: m.cfg.Cat, Name: name})
	return &in
}

// importRow asks for a list.
func (m *Model) importRow() row {
	return row{key: "import", text: "take in a wire list", detail: "Enter, then the name of the file: CSV, TSV, Markdown, xlsx, ods; nothing changes before you take it", field: &field{label: "wire list, file name", set: func(m *Model, text string) error {
		if m.cfg.ListBytes == nil {
			return fmt.Errorf("lists cannot be read here")
		}
		if text == "" {
			return fmt.Errorf("the name of a file is wanted")
		}
		data, err := m.cfg.ListBytes(text)
		if err != nil {
			return err
		}
		tables, err := wirelist.Read(filepath.Base(text), data, wirelist.Limits{})
		if err != nil {
			return err
		}
		next := importing{path: text, tables: tables}
		if was := m.taking; was != nil && was.path == text { // what was said of it before holds
			next.recipe, next.unit = was.recipe, was.unit
		}
		m.taking = m.readList(next)
		m.open(importScreen())
		m.tell("read; nothing is changed yet")
		return nil
	}}}
}

func importScreen() screen {
	return screen{name: "import", safe: true, page: func(m *Model, w int) page {
		in := m.taking
		if in == nil {
			return page{empty: "no list is open; Esc goes back"}
		}
		p := page{lines: []string{fmt.Sprintf("%s: what it makes, and what each column means. Nothing changes before it is taken.", filepath.Base(in.path))}}
		if in.err != nil {
			p.lines = []string{in.err.Error() + "."}
			p.rows = append(p.rows, row{key: "error", text: "it makes no harness yet", mark: "!", detail: "+ - on a column says what it means"})
		} else {
			p.rows = append(p.rows, m.takeRow(in))
			if len(m.h.Wires) > 0 {
				p.rows = append(p.rows, m.attachRow(in))
			}
		}
		p.rows = append(p.rows, m.unitRowOf(in))
		for _, c := range in.cols {
			p.rows = append(p.rows, m.columnRow(in, c, w))
		}
		p.rows = append(p.rows, m.recipeRow(in))
		if in.err == nil {
			for _, t := range in.rep.Lines() {
				mark := ""
				switch {
				case strings.HasPrefix(t, "stop"):
					mark = "!"
				case strings.HasPrefix(t, "warn"):
					mark = "?"
				}
				p.rows = append(p.rows, row{key: "told " + t, text: t, mark: mark, detail: t, enter: func(m *Model) { m.open(toldScreen(t)) }})
			}
		}
		return p
	}}
}

// toldScreen is one line of the report in full.
func toldScreen(text string) screen {
	return screen{name: "told", safe: true, page: func(_ *Model, w int) page {
		var p page
		for k, l := range wrap(text, max(w-6, 20)) {
			p.rows = append(p.rows, row{key: fmt.Sprint(k), text: l})
		}
		return p
	}}
}

// unsay takes back the last thing said of a list; the harness behind it is not touched.
func (m *Model) unsay() {
	if m.taking == nil || m.taking.before == nil {
		m.tell("nothing was said of this list; Esc goes back to the harness")
		return
	}
	m.taking = m.taking.before
	m.tell("taken back")
}

// takeRow makes the list the harness; it can be undone like anything else.
func (m *Model) takeRow(in *importing) row {
	what := fmt.Sprintf("take it: %s, %s", plural(len(in.h.Terminations), "end", "ends"), plural(len(in.h.Wires), "wire", "wires"))
	detail := "Enter: it becomes the harness here; Backspace brings back what was"
	return row{key: "take", text: what, detail: detail, enter: func(m *Model) {
		h := in.h
		h.Head.Units = m.h.Head.Units
		h.Rules, h.Reels, h.Parts = m.h.Rules, m.h.Reels, m.h.Parts // the shop's own stay
		m.back()
		m.branch, m.stack = 0, nil
		m.change(&h, "taken in: "+filepath.Base(in.path)+"; Build tells what is open, Backspace brings back what was")
		m.branch = max(0, m.firstBranch())
	}}
}

// attachRow keeps it beside the harness as its independent list.
func (m *Model) attachRow(in *importing) row {
	nets := compare.Nets(in.h, *m.h)
	return row{key: "attach", text: fmt.Sprintf("hold this harness against it: %s", plural(len(nets), "net", "nets")), detail: "Enter: kept in the file; where the two join otherwise the sheet says stop", enter: func(m *Model) {
		if len(nets) == 0 {
			m.refuse("the list names no cavity of this harness")
			return
		}
		if strange, _ := compare.Unheld(in.h, *m.h); len(strange) > 0 {
			m.refuse("the list names what this harness does not have: " + strings.Join(strange, ", ") + "; call it there by its id or its name")
			return
		}
		h := *m.h
		h.Listed, h.Head.ListedFrom = nets, model.Some(filepath.Base(in.path))
		m.back()
		m.change(&h, fmt.Sprintf("held against %s: %s", filepath.Base(in.path), plural(len(nets), "net", "nets")))
	}}
}

// unitRowOf is the unit of lengths that state none.
func (m *Model) unitRowOf(in *importing) row {
	now := string(in.unit)
	if now == "" {
		now = "not read"
	}
	return row{key: "unit", text: "lengths without a unit   " + now, detail: "+ - mm, cm, m, in, ft, or leave them as text", step: func(m *Model, by int) {
		all := []string{"", "mm", "cm", "m", "in", "ft"}
		v, _ := around(all, string(in.unit), by)
		n := *in
		n.before = in
		n.unit = wirelist.LengthUnit(v)
		m.taking = m.readList(n)
		m.tell("lengths without a unit: " + orDash(v))
	}}
}

// columnRow says what a column means, with what stands in it.
func (m *Model) columnRow(in *importing, c wirelist.Column, w int) row {
	where := ""
	if c.Sheet != "" || len(in.tables) > 1 {
		where = strings.TrimSpace(c.Sheet+" "+c.Place.Column) + " "
	}
	key := c.Key()
	said, byHand := in.recipe.Columns[key]
	if !byHand {
		said = c.Field
	}
	is := string(said)
	if said != c.Field {
		is += ", here " + string(c.Field) // nothing in this list takes what was said
	}
	text := fmt.Sprintf("column %s%s  is  %-11s %s", where, draw.Fit(key, min(18, max(8, w-50)), m.cfg.ASCII), is, strings.Join(c.Samples, " · "))
	return row{key: "column " + c.Place.String() + key, text: text, detail: "+ - says what it means; keep leaves it as text in a note", step: func(m *Model, by int) {
		var all []string
		for _, f := range wirelist.Fields() {
			all = append(all, string(f))
		}
		v, _ := around(all, string(said), by)
		n := *in
		n.before = in
		n.recipe.Columns = map[string]wirelist.Field{}
		for k, f := range in.recipe.Columns {
			n.recipe.Columns[k] = f
		}
		n.recipe.Columns[key] = wirelist.Field(v)
		m.taking = m.readList(n)
		m.tell(fmt.Sprintf("column %s is %s", key, v))
	}}
}

// recipeRow keeps what was said for the next list of the kind.
func (m *Model) recipeRow(in *importing) row {
	n := len(in.recipe.Columns)
	return row{key: "recipe", text: fmt.Sprintf("keep as a recipe: %s said by hand", plural(n, "column", "columns")), detail: "Enter, then a file name; contralay import --recipe takes it the next time", field: &field{label: "recipe, file name", set: func(m *Model, text string) error {
		if m.cfg.WriteNew == nil {
			return fmt.Errorf("nothing can be written here")
		}
		if text == "" {
			return fmt.Errorf("the name of a file is wanted")
		}
		if err := m.cfg.WriteNew(text, in.recipe.Encode()); err != nil {
			return err
		}
		m.tell("kept in " + text)
		return nil
	}}}
}
