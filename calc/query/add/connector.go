package add

import (
	"fmt"
	"slices"
	"strconv"

	"contralay/calc/sheet"
	"contralay/model"
	"contralay/model/catalogue"
)

// mostCavities is a stop against a slip of the finger: the largest insert has 187.
const mostCavities = 250

// ConnectorAsk is what a person answers to have a connector added. It has an insert, or so many
// cavities of one contact size.
type ConnectorAsk struct {
	Insert   string // any name of an arrangement of the catalogue
	Cavities int    // numbered from 1, where it has no insert
	Contact  string // their size; "" is not known
	ID       string // "" is P and the next free number
	Name     string // "" is none
	Gender   model.Opt[model.Gender]
	Key      model.Opt[string]
	Mount    model.Opt[model.Mount]
	Datum    model.Opt[model.Datum]
	Boot     model.Opt[string] // "" is none; not given: the straight one of its shell
}

// Connector adds a connector that nothing hangs on yet. What is not answered takes its default:
// of an insert pin contacts, key N, in line and the straight boot of its shell. Nothing is reserved.
func Connector(s *sheet.Sheet, ask ConnectorAsk) (Added, error) {
	m := newMaker(s)
	t := model.Termination{ID: ask.ID, Gender: ask.Gender, Key: ask.Key, Mount: ask.Mount, Datum: ask.Datum}
	if t.ID == "" {
		t.ID = m.h.FreeID("P")
		m.chose("id", []string{t.ID}, "%s: the next free number", t.ID)
	}
	if ask.Name != "" {
		t.Name = model.Some(ask.Name)
	}
	insert, known := s.Cat.Insert(ask.Insert)
	_, contact := s.Cat.Contact(ask.Contact)
	_, boot := s.Cat.Boot(ask.Boot.V)
	_, taken := s.Index.Termination[t.ID]
	_, alsoTaken := s.Index.Breakout[t.ID]
	switch {
	case taken || alsoTaken:
		return Added{H: s.H}, fmt.Errorf("%s is there already; allowed: an id that no termination and no breakout has", t.ID)
	case ask.Insert != "" && !known:
		return Added{H: s.H}, fmt.Errorf("the catalogue has no insert %q; allowed: %s", ask.Insert, listOf(s.Cat.InsertIDs(), "none"))
	case ask.Insert == "" && (ask.Cavities < 1 || ask.Cavities > mostCavities):
		return Added{H: s.H}, fmt.Errorf("a connector cannot have %d cavities; allowed: 1 to %d, or an insert", ask.Cavities, mostCavities)
	case ask.Contact != "" && !contact:
		return Added{H: s.H}, fmt.Errorf("the catalogue has no contact size %q; allowed: %s", ask.Contact,
			listOf(s.Cat.ContactSizes(), "none"))
	case ask.Boot.V != "" && !boot:
		return Added{H: s.H}, fmt.Errorf("the catalogue has no boot %q; allowed: %s", ask.Boot.V, listOf(s.Cat.BootIDs(), "none"))
	}
	if known {
		m.circular(&t, insert, ask)
	} else {
		m.plain(&t, ask)
	}
	if !t.Datum.Set {
		t.Datum = model.Some(model.DatumShellRear)
		if t.Boot.V != "" {
			t.Datum = model.Some(model.DatumBootLip)
		}
		m.chose("datum", []string{t.ID}, "%s: lengths start at the %s", t.ID, t.Datum.V)
	}
	m.h.Terminations = append(m.h.Terminations, t)
	m.out.Terminations = []string{t.ID}
	return m.done(), nil
}

// circular fills in what a connector with an insert has.
func (m *maker) circular(t *model.Termination, insert catalogue.Insert, ask ConnectorAsk) {
	t.Insert = model.Some(ask.Insert)
	of := []string{t.ID}
	m.tell(Chosen, "cavities", of, Taken{Standing: insert.NamesStanding, From: insert.NamesSource}, "%s has %d cavities: %s", t.ID,
		insert.Count(), catalogue.NamesList(insert.Cavities))
	if !t.Gender.Set {
		t.Gender = model.Some(model.GenderPin)
		m.chose("gender", of, "%s has pins", t.ID)
	}
	if !t.Key.Set {
		t.Key = model.Some("N")
		m.chose("key", of, "%s has key N", t.ID)
	}
	if !t.Mount.Set {
		t.Mount = model.Some(model.MountInline)
		m.chose("mount", of, "%s is in line", t.ID)
	}
	t.Boot = ask.Boot
	if !t.Boot.Set {
		for _, id := range m.s.Cat.BootIDs() {
			if b, _ := m.s.Cat.Boot(id); b.Shape == "straight" && b.Shell == insert.Shell && insert.Shell > 0 {
				t.Boot = model.Some(id)
				m.tell(Chosen, "boot", of, Taken{Standing: b.Standing, From: b.Source}, "%s has the straight boot of its shell, %s", t.ID,
					id)
				break
			}
		}
		if !t.Boot.Set {
			m.tell(Missing, "boot", of, Taken{}, "The catalogue has no straight boot for shell %d: %s has none", insert.Shell, t.ID)
		}
	}
}

// plain fills in what a connector without an insert has.
func (m *maker) plain(t *model.Termination, ask ConnectorAsk) {
	for k := range ask.Cavities {
		t.Cavities = append(t.Cavities, strconv.Itoa(k+1))
	}
	m.chose("cavities", []string{t.ID}, "%s has cavities 1 to %d. Give them the names that are on the part", t.ID, ask.Cavities)
	if ask.Boot.V != "" {
		t.Boot = ask.Boot
	}
	if ask.Contact == "" {
		m.tell(Missing, "contacts", []string{t.ID}, Taken{}, "The contact size of %s is not known: give it from the part", t.ID)
		return
	}
	t.Contacts = map[string][]string{ask.Contact: slices.Clone(t.Cavities)}
}
