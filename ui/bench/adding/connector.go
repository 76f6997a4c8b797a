package adding

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"

	"contralay/calc/query/add"
	"contralay/model"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// connectorForm is a connector on its way: nothing of it is in the harness until it is taken.
type connectorForm struct{ add.ConnectorAsk }

// connectorNames are the trade's words for what a connector is; a keyboard may type others.
var connectorNames = []string{"bulkhead", "engine side", "chassis side", "controller", "power box", "dash", "logger", "gearbox", "rear end",
	"front end", "left side", "right side", "steering wheel", "test point"}

// chooseConnector asks for an arrangement, then for the rest of the connector; at is the
// breakout it hangs on, "" for the first of a harness.
func chooseConnector(m *desk.Model, at string) {
	here := len(m.Stack)
	*desk.State[connectorForm](m) = connectorForm{add.ConnectorAsk{At: at, Gender: model.GenderPin}}
	m.Open(desk.ChooseScreen("an arrangement", func(*desk.Model) bool { return true }, arrangements,
		func(*desk.Model) string { return "" }, func(m *desk.Model, insert string) { openConnector(m, here, insert) }, counts(here)))
}

// openConnector opens the form of a connector with the defaults of its arrangement.
func openConnector(m *desk.Model, _ int, insert string) {
	f := desk.State[connectorForm](m)
	f.Insert = insert
	f.ConnectorAsk = add.Defaults(m.Sheet, f.ConnectorAsk)
	m.Show(ConnectorKind, f.ID)
}

// arrangements are those of the catalogue, as choices.
func arrangements(m *desk.Model) []desk.Choice {
	used := map[string]int{}
	for i := range m.H.Terminations {
		used[m.H.Terminations[i].Insert.V]++
	}
	var out []desk.Choice
	for _, id := range m.Sheet.Cat.InsertIDs() {
		in, _ := m.Sheet.Cat.Insert(id)
		out = append(out, desk.Choice{Value: id, Says: id, Used: used[id]})
		_ = in
	}
	return out
}

func counts(here int) *desk.Field {
	return &desk.Field{Label: "number of cavities", Number: true, Set: func(m *desk.Model, text string) error {
		n, err := counted(text, "cavities", 200)
		if err != nil {
			return err
		}
		f := desk.State[connectorForm](m)
		f.Count = n
		openConnector(m, here, "")
		return nil
	}}
}

// ConnectorPage is a connector before it is taken: what it will be, each with its default.
func ConnectorPage(m *desk.Model, _ int, _ string) desk.Page {
	f := desk.State[connectorForm](m)
	if f.ID == "" {
		return desk.Page{Empty: "No connector is being made. Esc goes back"}
	}
	p := desk.Page{Lines: []string{"A new connector. Nothing is added before you take it."}}
	where := ""
	if f.At != "" {
		where = ", on a leg of " + lengthText(m, f.LengthMM) + " from " + f.At
		p.Rows = append(p.Rows, desk.Row{Key: "length", Text: "leg          " + lengthText(m, f.LengthMM), Detail: "Type its length",
			Field: &desk.Field{Label: "length of the leg", Unit: m.Sys.Name(), Number: true, Next: true,
				Set: func(m *desk.Model, text string) (err error) { f.LengthMM, err = length(m, text); return err }}})
	}
	p.Rows = append(p.Rows,
		desk.Row{Key: "take", Text: fmt.Sprintf("take it: %s %s, %s", f.ID, f.Name, connectorText(m, f)), Detail: "Enter adds it" + where,
			Does: "take", Enter: takeConnector},
		desk.Row{Key: "name", Text: "name         " + words.OrDash(f.Name), Detail: "+ - goes through the trade's words. Enter lists them, or type one",
			Step: func(m *desk.Model, by int) { f.Name, _ = words.Around(connectorNames, f.Name, by) }, Enter: nameConnector},
		stepped("gender", "gender       ", "the contacts in it", model.Genders, &f.Gender),
		stepped("key", "key          ", "which way it is keyed: N is normal", add.Keys, &f.Key),
		stepped("mount", "mount        ", "how it is held", model.Mounts, &f.Mount),
		stepped("datum", "length from  ", "where the length of its branch starts", model.Data, &f.Datum),
		desk.Row{Key: "clock", Text: "key at       " + clock(f.Clock), Detail: "+ - or digits: hours, seen from the wire side. . leaves it open",
			Step: func(m *desk.Model, by int) { f.Clock = model.Some(hour(f.Clock, by)) }, Drop: func(*desk.Model) { f.Clock = model.Opt[int]{} }},
		desk.Row{Key: "boot", Text: "boot         " + words.OrDash(f.Boot), Detail: "+ - goes through the boots of its shell. . takes none",
			Step: func(m *desk.Model, by int) { f.Boot, _ = words.Around(add.Boots(m.Sheet.Cat, f.Insert), f.Boot, by) },
			Drop: func(*desk.Model) { f.Boot = "" }})
	if f.Insert == "" {
		p.Rows = append(p.Rows, stepped("contacts", "contacts     ", "the size of its contacts; '-' where it is not known", contactSizes(m), &f.Size))
	}
	return p
}

// stepped is a row whose value goes round a list.
func stepped[W ~string](key, label, what string, all []W, at *W) desk.Row {
	return desk.Row{Key: key, Text: label + words.OrDash(string(*at)), Detail: "+ - " + what,
		Step: func(_ *desk.Model, by int) { *at, _ = words.Around(all, *at, by) }}
}

func contactSizes(m *desk.Model) []string {
	var out []string
	for size := range m.Sheet.Cat.Contacts {
		out = append(out, size)
	}
	slices.SortFunc(out, func(a, b string) int {
		x, _ := strconv.Atoi(a)
		y, _ := strconv.Atoi(b)
		return cmp.Or(cmp.Compare(y, x), cmp.Compare(a, b))
	})
	return append(out, "")
}

// clock is an hour as it is said.
func clock(h model.Opt[int]) string {
	if !h.Set {
		return "-"
	}
	return fmt.Sprintf("%d o'clock", h.V)
}

// hour is the next or the previous hour; 12 comes first.
func hour(h model.Opt[int], by int) int {
	if !h.Set {
		return 12
	}
	return (h.V+by+11)%12 + 1
}

// nameConnector lists the trade's words for it.
func nameConnector(m *desk.Model) {
	f := desk.State[connectorForm](m)
	m.Open(desk.ChooseScreen("a name", func(*desk.Model) bool { return true }, func(*desk.Model) []desk.Choice {
		var out []desk.Choice
		for _, n := range connectorNames {
			out = append(out, desk.Choice{Value: n, Says: n})
		}
		return out
	}, func(*desk.Model) string { return f.Name }, func(_ *desk.Model, v string) { f.Name = v },
		&desk.Field{Label: "name", Value: f.Name, Set: func(_ *desk.Model, text string) error { f.Name = text; return nil }}))
}

// connectorText is what the connector is, in a few words.
func connectorText(m *desk.Model, f *connectorForm) string {
	if f.Insert != "" {
		in, _ := m.Sheet.Cat.Insert(f.Insert)
		return fmt.Sprintf("%s %s, %s", f.Insert, f.Gender, words.Plural(len(in.Cavities), "cavity", "cavities"))
	}
	return words.Plural(f.Count, "cavity", "cavities")
}

// takeConnector puts the connector into the harness.
func takeConnector(m *desk.Model) {
	f := desk.State[connectorForm](m)
	got, err := add.Connector(m.Sheet, f.ConnectorAsk)
	if err != nil {
		m.Refuse(err.Error())
		return
	}
	toMap(m)
	m.Change(got.H, got.Says)
	if f.At == "" {
		m.PutOn("place " + f.ID)
		return
	}
	m.PutOn("branch " + got.H.Branches[len(got.H.Branches)-1].ID)
}
