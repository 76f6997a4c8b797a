package ends

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"
	"strings"

	"contralay/calc/query/inserts"
	"contralay/model"
	"contralay/model/catalogue"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/kit"
	"contralay/ui/bench/words"
	"contralay/ui/paper/which"
)

// InsertKind is the screen on which an arrangement is chosen.
const InsertKind desk.Kind = "arrangement"

// Choosing is an arrangement that is being chosen.
type Choosing struct {
	There  func(m *desk.Model) bool                // what it is chosen for is still there
	Now    string                                  // what is in use; "" none
	Gender model.Gender                            // as which it is shown first; "" is pin
	Take   func(m *desk.Model, insert string)      // takes the one that is chosen; Gender says as what
	Own    func(m *desk.Model, cavities int) error // takes so many cavities of no arrangement; nil where that is no choice

	count int // only those of so many cavities are listed; 0 lists all
}

// ChooseInsert lists the arrangements; take gets the one that is chosen.
func ChooseInsert(m *desk.Model, there func(m *desk.Model) bool, take func(m *desk.Model, insert string)) {
	Choose(m, Choosing{There: there, Take: take})
}

// Choose lists the arrangements for what wants one.
func Choose(m *desk.Model, c Choosing) {
	c.Gender = model.Gender(cmp.Or(string(c.Gender), string(model.GenderPin)))
	*desk.State[Choosing](m) = c
	m.Show(InsertKind, "")
}

// Gender is the gender that was on the page when the arrangement was taken.
func Gender(m *desk.Model) model.Gender { return desk.State[Choosing](m).Gender }

// ChooseInsertPage lists arrangements: first what this harness has, then small shells first. Digits
// and Enter keep those of so many cavities.
func ChooseInsertPage(m *desk.Model, w int, _ string) desk.Page {
	c := desk.State[Choosing](m)
	if c.There == nil || !c.There(m) {
		return desk.Page{Empty: "What this list was for is gone. Esc goes back"}
	}
	all := listed(m, c.count)
	p := desk.Page{Lines: []string{fmt.Sprintf("%s. Type how many cavities, then Enter.", words.Capital(string(c.Gender)))}}
	if c.count > 0 {
		p.Lines = []string{fmt.Sprintf("%s, %s. Press . to see all.", words.Capital(string(c.Gender)),
			words.Plural(c.count, "cavity", "cavities"))}
	}
	columns := insertColumns(m, c)
	p.Cols = columns.Head()
	for _, i := range all {
		r := desk.Row{Key: i.ID, TextOf: func() string { return columns.Line(i) }, Does: "take",
			More: func() string { return insertText(m, i) },
			Enter: func(m *desk.Model) {
				m.Back()
				c.Take(m, i.ID)
			}}
		if i.ID == c.Now && c.count == 0 {
			p.Start = len(p.Rows)
		}
		p.Rows = append(p.Rows, r)
	}
	if c.Own != nil && c.count > 0 {
		n := c.count
		p.Rows = append(p.Rows, desk.Row{Key: "own",
			Text:   fmt.Sprintf("none of these: %s of its own", words.Plural(n, "cavity", "cavities")),
			Detail: "Enter takes a connector that is in no catalogue", Does: "take", Enter: func(m *desk.Model) {
				m.Back()
				if err := c.Own(m, n); err != nil {
					m.Refuse(err.Error())
				}
			}})
	}
	for k := range p.Rows {
		p.Rows[k].Step = turnGender
		p.Rows[k].Field = &desk.Field{Label: "cavities", Number: true, Set: narrow}
		if c.count > 0 {
			p.Rows[k].Drop = func(m *desk.Model) {
				c.count = 0
				m.Unput()
				m.Tell("all arrangements")
			}
		}
	}
	return p
}

// turnGender shows the other gender.
func turnGender(m *desk.Model, by int) {
	c := desk.State[Choosing](m)
	c.Gender, _ = words.Around(model.Genders, c.Gender, by)
	m.Tell(string(c.Gender) + " insert, seen from the rear, where the wires go in")
}

// mostCavities is a stop against a slip of the finger: the largest arrangement has 187.
const mostCavities = 999

// narrow keeps the arrangements of so many cavities.
func narrow(m *desk.Model, text string) error {
	c := desk.State[Choosing](m)
	n, err := strconv.Atoi(text)
	if err != nil || n < 1 || n > mostCavities {
		return fmt.Errorf("%q is no number of cavities: give 1 to %d", text, mostCavities)
	}
	if len(listed(m, n)) == 0 && c.Own == nil {
		return fmt.Errorf("no arrangement has %d cavities. %s", n, nearest(m, n))
	}
	c.count = n
	m.Unput()
	m.Tell(fmt.Sprintf("%s of %s. Enter takes the row, . shows all again", words.Plural(len(listed(m, n)), "arrangement", "arrangements"),
		words.Plural(n, "cavity", "cavities")))
	return nil
}

// nearest says which numbers of cavities there are round one that no arrangement has.
func nearest(m *desk.Model, n int) string {
	below, above := 0, 0
	for _, i := range listed(m, 0) {
		switch k := i.Count(); {
		case k < n:
			below = max(below, k)
		case above == 0 || k < above:
			above = k
		}
	}
	switch {
	case above == 0:
		return fmt.Sprintf("The largest has %d", below)
	case below == 0:
		return fmt.Sprintf("The smallest has %d", above)
	}
	return fmt.Sprintf("There are some of %d and of %d", below, above)
}

// shelf is the list of arrangements by number of cavities, made once for a sheet.
type shelf struct{ kept desk.Kept[[]catalogue.Insert] }

// listed are the arrangements of so many cavities, or all of them: what this harness has first,
// oftenest first, then small shells first.
func listed(m *desk.Model, count int) []catalogue.Insert {
	return desk.State[shelf](m).kept.Get(m.Sheet, 0, strconv.Itoa(count), func() []catalogue.Insert { return sorted(m, count) })
}

func sorted(m *desk.Model, count int) []catalogue.Insert {
	cat := m.Sheet.Cat
	used := inUse(m)
	var out []catalogue.Insert
	for _, id := range cat.InsertIDs() {
		if i, _ := cat.Insert(id); count == 0 || i.Count() == count {
			out = append(out, i)
		}
	}
	slices.SortStableFunc(out, func(x, y catalogue.Insert) int {
		return cmp.Or(cmp.Compare(used[y.ID], used[x.ID]), cmp.Compare(x.Shell, y.Shell), cmp.Compare(x.Count(), y.Count()),
			inserts.Better(cat, x, y))
	})
	return out
}

// inUse is how often this harness has each arrangement, by its first name.
func inUse(m *desk.Model) map[string]int {
	var names []string
	for t := range m.H.Terminations {
		if i, known := m.Sheet.Cat.Insert(m.H.Terminations[t].Insert.V); known {
			names = append(names, i.ID)
		}
	}
	return desk.Counted(names)
}

// insertColumns are the columns of the list of arrangements.
func insertColumns(m *desk.Model, c *Choosing) kit.Columns[catalogue.Insert] {
	used := inUse(m)
	return kit.GivenColumns([]kit.Column[catalogue.Insert]{
		{Head: "here", Least: 4, Cell: func(i catalogue.Insert) string {
			says := words.Either(i.ID == c.Now, "=", " ")
			if n := used[i.ID]; n > 0 {
				says += strconv.Itoa(n)
			}
			return says
		}},
		{Head: "arrangement", Least: 13, Cell: which.Names},
		{Head: "shell", Least: 5, Align: kit.ToRight, Cell: func(i catalogue.Insert) string { return shellText(i) }},
		{Head: "contacts", Cell: contactsText},
	}, m.Cfg.ASCII)
}

func shellText(i catalogue.Insert) string {
	if i.Shell == 0 {
		return "-"
	}
	return strconv.Itoa(i.Shell)
}

// contactsText is the contacts as a cut list has them: "40x22D 9x16 4x12".
func contactsText(i catalogue.Insert) string {
	var out []string
	for _, g := range i.Contacts {
		out = append(out, fmt.Sprintf("%dx%s", g.Count, g.Size))
	}
	return strings.Join(out, " ")
}

// insertText is an arrangement in words.
func insertText(m *desk.Model, i catalogue.Insert) string {
	var parts []string
	for _, g := range i.Contacts {
		parts = append(parts, fmt.Sprintf("%d of size %s", g.Count, g.Size))
	}
	text := strings.Join(parts, ", ")
	if _, says := i.Qualified(); says != "" {
		text += ". " + words.Capital(says)
	}
	return text + ". + - turns pin and socket, Enter takes it"
}
