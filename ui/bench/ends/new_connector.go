package ends

import (
	"cmp"
	"fmt"
	"slices"
	"strconv"

	"contralay/calc/query/add"
	"contralay/model"
	"contralay/model/edit"
	"contralay/model/unit"
	"contralay/ui/bench/desk"
	"contralay/ui/bench/words"
)

// connectorForm is a connector on its way: nothing of it is in the harness until it is taken.
type connectorForm struct {
	at     string          // the breakout that it hangs on; "" for none
	length unit.Millimetre // of the leg there; 0 is not measured yet

	insert, contact, id, name, key, boot string
	cavities                             int
	gender                               model.Gender
	mount                                model.Mount
	datum                                model.Datum
	clock                                model.Opt[int]
}

// ask is the form as it is asked for.
func (f *connectorForm) ask() add.ConnectorAsk {
	a := add.ConnectorAsk{Insert: f.insert, Cavities: f.cavities, Contact: f.contact, ID: f.id, Name: f.name,
		Datum: model.Some(f.datum), Boot: model.Some(f.boot)}
	a.Gender = model.Opt[model.Gender]{V: f.gender, Set: f.gender != ""}
	a.Key = model.Opt[string]{V: f.key, Set: f.key != ""}
	a.Mount = model.Opt[model.Mount]{V: f.mount, Set: f.mount != ""}
	return a
}

// connectorNames are the trade's words for what a connector is; a keyboard may type others.
var connectorNames = []string{"bulkhead", "engine side", "chassis side", "controller", "power box", "dash", "logger", "gearbox", "rear end",
	"front end", "left side", "right side", "steering wheel", "test point"}

// chooseConnector asks for an arrangement, then for the rest of the connector; at is the breakout it
// hangs on, "" for the first of a harness.
func chooseConnector(m *desk.Model, at string) {
	*desk.State[connectorForm](m) = connectorForm{at: at, gender: model.GenderPin, mount: model.MountInline, key: keys[0]}
	Choose(m, Choosing{There: func(*desk.Model) bool { return true },
		Take: func(m *desk.Model, insert string) { openConnector(m, insert, 0) },
		Own:  func(m *desk.Model, cavities int) error { openConnector(m, "", cavities); return nil }})
}

// openConnector opens the form of a connector with the defaults of its arrangement, or of so many cavities.
func openConnector(m *desk.Model, insert string, cavities int) {
	f := desk.State[connectorForm](m)
	f.gender = Gender(m)
	f.insert, f.cavities, f.id, f.name = insert, cavities, m.H.FreeID("P"), connectorNames[min(len(m.H.Terminations), 1)]
	f.boot, f.datum = add.StraightBoot(m.Sheet.Cat, insert), model.DatumShellRear
	if f.boot != "" {
		f.datum = model.DatumBootLip
	}
	if cavities > 0 {
		// Nothing else is known of it before somebody reads it off the part.
		f.datum, f.gender, f.key, f.mount = model.DatumMatingFace, "", "", ""
	}
	m.Show(ConnectorKind, f.id)
}

// keys are the ways in which such a connector can be keyed (MIL-DTL-38999: N and A to E).
var keys = []string{"N", "A", "B", "C", "D", "E"}

// ConnectorPage is a connector before it is taken: what it will be, each with its default.
func ConnectorPage(m *desk.Model, _ int, _ string) desk.Page {
	f := desk.State[connectorForm](m)
	if f.id == "" {
		return desk.Page{Empty: "No connector is being made. Esc goes back"}
	}
	p := desk.Page{Lines: []string{"A new connector. Nothing is added before you take it."}}
	where := ""
	if f.at != "" {
		where = ", on a leg of " + lengthText(m, f.length) + " from " + f.at
		p.Rows = append(p.Rows, desk.Row{Key: "length", Text: "leg          " + lengthText(m, f.length), Detail: "Type its length",
			Field: &desk.Field{Label: "length of the leg", Unit: m.Sys.Name(), Number: true, Next: true,
				Set: func(m *desk.Model, text string) (err error) {
					if f.length, err = length(m, text); err == nil {
						m.Tell("leg: " + lengthText(m, f.length))
					}
					return err
				}}})
	}
	p.Rows = append(p.Rows,
		desk.Row{Key: "take", Text: fmt.Sprintf("take it: %s %s, %s", f.id, f.name, connectorText(m, f)), Detail: "Enter adds it" + where,
			Does: "take", Enter: takeConnector},
		desk.Row{Key: "name", Text: "name         " + words.OrDash(f.name),
			Detail: "+ - goes through the trade's words. Enter lists them, or type one",
			Step:   func(m *desk.Model, by int) { f.name, _ = words.Around(connectorNames, f.name, by) }, Enter: nameConnector},
		stepped("gender", "gender       ", "the contacts in it", model.Genders, &f.gender),
		stepped("key", "key          ", "which way it is keyed: N is normal", keys, &f.key),
		stepped("mount", "mount        ", "how it is held", model.Mounts, &f.mount),
		stepped("datum", "length from  ", "where the length of its branch starts", model.Data, &f.datum),
		desk.Row{Key: "clock", Text: "key at       " + clock(f.clock),
			Detail: "+ - or digits: hours, seen from the wire side. . leaves it open",
			Step:   func(m *desk.Model, by int) { f.clock = model.Some(hour(f.clock, by)) },
			Drop:   func(*desk.Model) { f.clock = model.Opt[int]{} }},
		desk.Row{Key: "boot", Text: "boot         " + words.OrDash(f.boot), Detail: "+ - goes through the boots of its shell. . takes none",
			Step: func(m *desk.Model, by int) { f.boot, _ = words.Around(add.BootsFor(m.Sheet.Cat, f.insert), f.boot, by) },
			Drop: func(*desk.Model) { f.boot = "" }})
	if f.insert == "" {
		p.Rows = append(p.Rows, stepped("contacts", "contacts     ", "the size of its contacts; '-' where it is not known", contactSizes(m),
			&f.contact))
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
	}, func(*desk.Model) string { return f.name }, func(_ *desk.Model, v string) { f.name = v },
		&desk.Field{Label: "name", Value: f.name, Set: func(_ *desk.Model, text string) error { f.name = text; return nil }}))
}

// connectorText is what the connector is, in a few words.
func connectorText(m *desk.Model, f *connectorForm) string {
	if f.insert != "" {
		in, _ := m.Sheet.Cat.Insert(f.insert)
		return fmt.Sprintf("%s %s, %s", f.insert, f.gender, words.Plural(len(in.Cavities), "cavity", "cavities"))
	}
	return words.Plural(f.cavities, "cavity", "cavities")
}

// takeConnector puts the connector into the harness.
func takeConnector(m *desk.Model) {
	f := desk.State[connectorForm](m)
	got, err := add.Connector(m.Sheet, f.ask())
	if err != nil {
		m.Refuse(err.Error())
		return
	}
	h := got.H
	if f.clock.Set {
		h = h.EditTermination(len(h.Terminations)-1, func(t *model.Termination) { t.Clock = f.clock })
	}
	branch := ""
	if f.at != "" {
		if h, branch, err = edit.AddBranch(h, f.at, f.id, f.length); err != nil {
			m.Refuse(err.Error())
			return
		}
	}
	toMap(m)
	if branch == "" {
		m.Change(h, fmt.Sprintf("%s added: %s. + runs its trunk", f.id, connectorText(m, f)))
		m.PutOn("place " + f.id)
		return
	}
	m.Change(h, fmt.Sprintf("%s added on %s: %s", f.id, branch, connectorText(m, f)))
	m.PutOn("branch " + branch)
}
