package add

import (
	"slices"
	"strings"
	"testing"

	"contralay/calc"
	"contralay/calc/calctest"
	"contralay/model"
)

func TestConnectorByItsInsert(t *testing.T) {
	s := calctest.Built(t, trunk)
	a, err := Connector(s, ConnectorAsk{Insert: "19-32", Gender: model.Some(model.GenderSocket)}) // by its other name
	if err != nil {
		t.Fatal(err)
	}
	c := a.H.Terminations[2]
	if c.ID != "P3" || c.Insert.V != "19-32" || c.Gender.V != model.GenderSocket || c.Key.V != "N" || c.Mount.V != model.MountInline ||
		c.Boot.V != "boot-straight-18" || c.Datum.V != model.DatumBootLip || len(c.Reserved) > 0 {
		t.Errorf("%+v", c)
	}
	if got := says(a, Chosen, "gender"); got != "" {
		t.Errorf("what was answered is told: %q", got)
	}
	a, err = Connector(s, ConnectorAsk{Insert: "18-32", Boot: model.Some("")})
	if c := a.H.Terminations[2]; err != nil || c.Boot.V != "" || c.Datum.V != model.DatumShellRear {
		t.Errorf("%v %+v", err, c)
	}
	if sheet := calc.Build(a.H, s.Base, nil); len(stops(sheet)) > 0 {
		t.Errorf("%v", stops(sheet))
	}
}

func TestConnectorByNumber(t *testing.T) {
	s := calctest.Built(t, trunk)
	a, err := Connector(s, ConnectorAsk{Cavities: 4, Contact: "16", Name: "Pump", ID: "PUMP"})
	c := a.H.Terminations[2]
	if err != nil || c.ID != "PUMP" || c.Name.V != "Pump" || strings.Join(c.Cavities, "") != "1234" ||
		strings.Join(c.Contacts["16"], "") != "1234" ||
		c.Gender.Set || c.Key.Set || c.Boot.Set || c.Datum.V != model.DatumShellRear {
		t.Errorf("%v %+v", err, c)
	}
	a, err = Connector(s, ConnectorAsk{Cavities: 1})
	if err != nil || a.H.Terminations[2].Contacts != nil || says(a, Missing, "contacts") == "" {
		t.Errorf("%v %+v", err, a)
	}
	for want, ask := range map[string]ConnectorAsk{
		"P1 is there already; allowed: ":                            {ID: "P1", Cavities: 2},
		"J1 is there already; allowed: ":                            {ID: "J1", Cavities: 2},
		`the catalogue has no insert "99-99"; allowed: `:            {Insert: "99-99"},
		"a connector cannot have 0 cavities; allowed: 1 to 250":     {},
		`the catalogue has no contact size "7"; allowed: 22M, 22`:   {Cavities: 2, Contact: "7"},
		`the catalogue has no boot "sock"; allowed: boot-45-8, boo`: {Insert: "18-32", Boot: model.Some("sock")},
	} {
		if a, err := Connector(s, ask); err == nil || !strings.HasPrefix(err.Error(), want) || a.H != s.H {
			t.Errorf("%v, want %s", err, want)
		}
	}
}

func TestSpares(t *testing.T) {
	s := calctest.Built(t, trunk)
	a, err := Spares(s, SparesAsk{Count: 2, From: "P1", To: "P2"})
	if err != nil {
		t.Fatal(err)
	}
	for k, want := range [][2]string{{"P1:1", "P2:A"}, {"P1:2", "P2:B"}} {
		if w := a.H.Wires[k]; w.From.V != want[0] || w.To.V != want[1] || w.Role.V != model.RoleSpare || w.Size != "22" || w.Amps.Set {
			t.Errorf("%+v", w)
		}
	}
	if got := stops(calc.Complete(a.H, s.Base, nil)); len(got) > 0 {
		t.Errorf("%v", got)
	}
	// As many as there is room for, and how many not.
	a, err = Spares(s, SparesAsk{Count: 40, From: "P1", CappedAt: "J1"})
	if err != nil || len(a.Wires) != 37 || a.H.Wires[36].CappedAt.V != "J1" ||
		says(a, Missing, "cavity") != "P1 has 37 free cavities that take 22 AWG, and 40 are needed: 3 wires are not made" {
		t.Errorf("%v %d %q", err, len(a.Wires), says(a, Missing, "cavity"))
	}
	a, err = Spares(s, SparesAsk{Count: 34, From: "P1", To: "P2"})
	if err != nil || len(a.Wires) != 32 ||
		says(a, Missing, "cavity") != "P2 has 32 free cavities that take 22 AWG, and 34 are needed: 2 wires are not made" {
		t.Errorf("%v %d %q", err, len(a.Wires), says(a, Missing, "cavity"))
	}
	for want, ask := range map[string]SparesAsk{
		"0 spares cannot be added at once; allowed: 1 to 200":                         {From: "P1", To: "P2"},
		`there is no termination "X"; allowed: P1, P2`:                                {From: "X", To: "P2", Count: 1},
		"a spare goes to another termination, or is capped at a place; allowed: one":  {From: "P1", Count: 1},
		"a spare goes to another termination, or is capped at a place; allowed: one ": {From: "P1", To: "P2", CappedAt: "J1", Count: 1},
		`there is no breakout and no termination "J7" to cap spares at; allowed: J1`:  {From: "P1", CappedAt: "J7", Count: 1},
		"a spare cannot end at P1, where it begins; allowed: another place":           {From: "P1", To: "P1", Count: 1},
		"P1 has no free cavity that takes AS22759/32 20 AWG; allowed: ":               {From: "P1", CappedAt: "J1", Count: 1, Size: "20"},
	} {
		if a, err := Spares(s, ask); err == nil || !strings.HasPrefix(err.Error(), want) || a.H != s.H {
			t.Errorf("%v, want %s", err, want)
		}
	}
}

// Each wire has a colour that no other at its ends has, of those that the shop stocks and of no others.
func TestColours(t *testing.T) {
	s := bench(t)
	for _, g := range calc.Complete(s.H, s.Base, nil).Snags {
		if g.Rule == "colour.same" {
			t.Errorf("%+v", g)
		}
	}
	h := *s.H
	h.Rules.ColourStock = []string{"81", "82", "83"}
	stocked := calc.Build(&h, s.Base, nil)
	a, err := Spares(stocked, SparesAsk{Count: 2, From: s.H.Terminations[0].ID, CappedAt: s.H.Breakouts[0].ID})
	if err != nil {
		t.Fatal(err)
	}
	for _, w := range a.H.Wires[len(s.H.Wires):] {
		if !slices.Contains(h.Rules.ColourStock, w.Colour.V) {
			t.Errorf("wire %s is %q, which is not in stock", w.ID, w.Colour.V)
		}
	}
}

func TestSpan(t *testing.T) {
	for want, ids := range map[string][]string{
		"101 to 103, 105":     {"105", "101", "103", "102"},
		"INJ1, INJ2":          {"INJ1", "INJ2"},
		"INJ1 to INJ3":        {"INJ3", "INJ1", "INJ2"},
		"9 to 11, w":          {"w", "9", "10", "11"},
		"":                    nil,
		"Pump 1 to Pump 3, x": {"x", "Pump 1", "Pump 2", "Pump 3"},
	} {
		if got := span(ids); got != want {
			t.Errorf("%v: %q, want %q", ids, got, want)
		}
	}
}
