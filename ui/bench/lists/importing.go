package lists

import (
	"fmt"
	"path/filepath"
	"strings"

	"contralay/model"
	"contralay/model/compare"
	"contralay/model/visible"
	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	wirelistname "contralay/model/wirelist/name"
	"contralay/model/wirelist/report"
	"contralay/model/wirelist/table"
	"contralay/model/wirelist/value"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// Other people's wire lists, taken in on the bench: what each column means can be said, and
// nothing changes before the harness they make is taken.

// importing is a list that is open.
type importing struct {
	Path   string
	Tables []table.Table
	Recipe wirelistname.Recipe
	Unit   value.LengthUnit
	Found  []wirelist.Found // its tables, and what each is read as
	H      model.Harness
	Rep    report.Report
	Err    error
	rows   perRow
	drawn  drawn
	Before *importing // as it was before the last thing said of it
}

// open is the list that was opened last, or nil.
type open struct{ list *importing }

func opened(m *desk.Model) *open { return desk.State[open](m) }

// read makes the harness anew from what the columns mean by now.
func readList(m *desk.Model, in importing) *importing {
	in.Recipe.Unit = in.Unit
	recipe := &in.Recipe
	in.Found = wirelist.Tables(in.Tables, recipe)
	name := strings.TrimSuffix(filepath.Base(in.Path), filepath.Ext(in.Path))
	in.H, in.Rep, in.Err = wirelist.Import(in.Tables, draft.Options{Recipe: recipe, Unit: in.Unit, Catalogue: m.Cfg.Cat, Name: name})
	in.rows, in.drawn = rowsOf(&in), drawn{}
	return &in
}

// ImportRow asks for a list.
func ImportRow(m *desk.Model) desk.Row {
	typed := desk.Field{Label: "wire list, file name", Set: func(m *desk.Model, text string) error {
		if m.Cfg.ListBytes == nil {
			return fmt.Errorf("lists cannot be read here")
		}
		if text == "" {
			return fmt.Errorf("type the name of a file")
		}
		data, err := m.Cfg.ListBytes(text)
		if err != nil {
			return err
		}
		tables, err := table.Read(filepath.Base(text), data, table.Limits{})
		if err != nil {
			return err
		}
		next := importing{Path: text, Tables: tables}
		if was := opened(m).list; was != nil && was.Path == text { // what was said of it before holds
			next.Recipe, next.Unit = was.Recipe, was.Unit
		}
		opened(m).list = readList(m, next)
		m.Show(ImportKind, "")
		m.Tell("read. Nothing is changed yet")
		return nil
	}}
	return desk.Row{Key: "import", Text: "import a wire list",
		Detail: "Enter lists the files. Nothing changes until you take it",
		Enter:  func(m *desk.Model) { m.AskFile("wire list", listEnds, typed) }}
}

// listEnds are the ends of file names that a wire list may have.
var listEnds = []string{".csv", ".tsv", ".txt", ".md", ".xlsx", ".ods", ".html", ".htm", ".rst", ".adoc", ".org", ".wiki", ".toml"}

// The screens of taking in a list.
const (
	ImportKind desk.Kind = "import"
	TableKind  desk.Kind = "table of a list"
	ToldKind   desk.Kind = "told"
)

// ImportPage is the list that is open: what it makes, and what each of its tables is read as.
func ImportPage(m *desk.Model, w int, _ string) desk.Page {
	in := opened(m).list
	if in == nil {
		return desk.Page{Empty: "No list is open. Esc goes back"}
	}
	p := desk.Page{Lines: []string{fmt.Sprintf("%s: what it makes, and what its tables are read as. Nothing changes until you take it.",
		filepath.Base(in.Path))}}
	if in.Err != nil {
		p.Lines = []string{in.Err.Error() + "."}
		p.Rows = append(p.Rows, desk.Row{Key: "error", Text: "it makes no harness yet", Mark: "!",
			Detail: "Enter on a table says what its columns mean"})
	} else {
		p.Rows = append(p.Rows, takeRow(m, in))
		if len(m.H.Wires) > 0 && len(in.H.Wires) > 0 {
			p.Rows = append(p.Rows, attachRow(m, in))
			p.Rows = append(p.Rows, notHeldRows(m, in)...)
		}
	}
	p.Rows = append(append(p.Rows, tableRows(m, in, w)...), unitRowOf(m, in))
	p.Rows = append(p.Rows, recipeRow(in), useRow())
	if in.Err == nil {
		for _, t := range in.Rep.Lines() {
			mark := ""
			switch {
			case strings.HasPrefix(t, "stop"):
				mark = "!"
			case strings.HasPrefix(t, "warn"):
				mark = "?"
			}
			p.Rows = append(p.Rows, desk.Row{Key: "told " + t, Text: t, Mark: mark, Detail: t,
				Enter: func(m *desk.Model) { m.Show(ToldKind, t) }})
		}
	}
	return p
}

// ToldPage is one line of the report in full.
func ToldPage(m *desk.Model, w int, text string) desk.Page {
	return desk.Page{Widget: m.Read([]string{text}, w-1)}
}

// Unsay takes back the last thing said of a list; the harness behind it is not touched.
func Unsay(m *desk.Model) {
	now := opened(m)
	if now.list == nil || now.list.Before == nil {
		m.Tell("there is no choice to undo in this list. Esc goes back to the harness")
		return
	}
	now.list = now.list.Before
	m.Tell("undone")
}

// takeRow makes the list the harness; it can be undone like anything else.
func takeRow(m *desk.Model, in *importing) desk.Row {
	what := fmt.Sprintf("take it: %s, %s", words.Plural(len(in.H.Terminations), "end", "ends"),
		words.Plural(len(in.H.Wires), "wire", "wires"))
	detail := "Enter makes it the harness here. Backspace brings the old one back"
	return desk.Row{Key: "take", Text: what, Detail: detail, Enter: func(m *desk.Model) {
		h := in.H
		h.Head.Units = m.H.Head.Units
		h.Rules, h.Reels, h.Parts = m.H.Rules, m.H.Reels, m.H.Parts // the shop's own stay
		m.Back()
		m.Branch, m.Stack = 0, nil
		m.Change(&h, "imported: "+filepath.Base(in.Path)+". Build lists the open points, Backspace undoes it")
		m.Branch = max(0, m.MostToLay())
	}}
}

// attachRow keeps it beside the harness as its independent list.
func attachRow(m *desk.Model, in *importing) desk.Row {
	list, _ := compare.Bare(in.H, in.Rep)
	nets := compare.Nets(list, *m.H)
	return desk.Row{Key: "attach", Text: fmt.Sprintf("check this harness against it: %s", words.Plural(len(nets), "net", "nets")),
		Detail: "Enter keeps it in the file. Where the two differ the sheet says stop", Enter: func(m *desk.Model) {
			if len(nets) == 0 {
				m.Refuse("the list names no cavity of this harness")
				return
			}
			if strange, _ := compare.Unheld(list, *m.H); len(strange) > 0 {
				m.Refuse("the list names what this harness does not have: " + strings.Join(strange, ", ") +
					". Use its id or its name in the list")
				return
			}
			says := fmt.Sprintf("checked against %s: %s", filepath.Base(in.Path), words.Plural(len(nets), "net", "nets"))
			if len(compare.NotHeld(list, *m.H)) > 0 {
				says += "; not all of the harness is checked"
			}
			h := *m.H
			h.Listed, h.Head.ListedFrom = nets, model.Some(visible.Line(filepath.Base(in.Path)))
			m.Back()
			m.Change(&h, says)
		}}
}

// notHeldRows say what of this harness the list cannot check, before somebody relies on it.
func notHeldRows(m *desk.Model, in *importing) (rows []desk.Row) {
	list, _ := compare.Bare(in.H, in.Rep)
	if len(compare.Nets(list, *m.H)) == 0 {
		return nil // it is a list of another harness
	}
	for _, t := range compare.NotHeld(list, *m.H) {
		rows = append(rows, desk.Row{Key: "not held " + t, Text: "  " + t, Detail: t,
			Enter: func(m *desk.Model) { m.Show(ToldKind, t) }})
	}
	return rows
}

// unitRowOf is the unit of lengths that state none.
func unitRowOf(m *desk.Model, in *importing) desk.Row {
	now := string(in.Unit)
	if now == "" {
		now = "not read"
	}
	return desk.Row{Key: "unit", Text: "lengths without a unit   " + now, Detail: "+ - mm, cm, m, in, ft, or leave them as text",
		Step: func(m *desk.Model, by int) {
			all := []string{"", "mm", "cm", "m", "in", "ft"}
			v, _ := words.Around(all, string(in.Unit), by)
			n := *in
			n.Before = in
			n.Unit = value.LengthUnit(v)
			opened(m).list = readList(m, n)
			m.Tell("lengths without a unit: " + words.OrDash(v))
		}}
}
