package wirelist_test

import (
	"strings"
	"testing"

	"contralay/model"
)

// The pin table of two connectors, end to end: what a builder looks for in it.
func TestPinTable(t *testing.T) {
	h, report := imported(t, lists+"/pin-table.md")
	if n := len(h.Terminations); n != 2 {
		t.Errorf("%d terminations", n)
	}
	bulkhead := h.Terminations[0]
	if bulkhead.Name.V != "Bulkhead, engine side" || bulkhead.Insert.V != "18-32" || bulkhead.Gender.V != model.GenderSocket ||
		strings.Join(bulkhead.Reserved, " ") != "K" {
		t.Errorf("bulkhead: %+v", bulkhead)
	}
	at := map[string]int{}
	for i, w := range h.Wires {
		at[w.From.V] = i
		if w.To.V != "" {
			at[w.To.V] = i
		}
	}
	unit := func(name, a, b string, shield bool) {
		for _, u := range h.Units {
			if u.Name.V == name {
				if len(u.Wires) != 2 || u.Wires[0] != h.Wires[at[a]].ID || u.Wires[1] != h.Wires[at[b]].ID ||
					u.Build.V != model.BuildPair ||
					u.Shield.V != shield {
					t.Errorf("%s: %+v", name, u)
				}
				return
			}
		}
		t.Errorf("no unit %s", name)
	}
	unit("CRANK", "Bulkhead:E", "Bulkhead:F", true)
	unit("CAN", "Bulkhead:G", "Bulkhead:H", false)
	if w := h.Wires[at["Bulkhead:J"]]; w.Role.V != model.RoleSpare || w.Colour.V != "9" || w.Size != "22" {
		t.Errorf("spare: %+v", w)
	}
	for _, free := range []string{"Bulkhead:D", "Bulkhead:K"} {
		if i, wired := at[free]; wired {
			t.Errorf("%s has wire %s", free, h.Wires[i].ID)
		}
	}
	l, m := h.Wires[at["Bulkhead:L"]], h.Wires[at["Bulkhead:M"]]
	if l.ID == m.ID || l.Signal.V != "Sensor ground" || m.Signal != l.Signal {
		t.Errorf("L and M: %+v, %+v", l, m)
	}
	if a := h.Wires[at["Bulkhead:A"]]; a.To.V != "Injector-rail:1" {
		t.Errorf("injector 1: %+v", a)
	}
	if len(h.Feeds) != 1 || h.Feeds[0].Amps.V != 7.5 || h.Feeds[0].Wires[0] != h.Wires[at["Bulkhead:C"]].ID {
		t.Errorf("feeds: %+v", h.Feeds)
	}
	lines := report.Lines()
	if len(lines) > 11 {
		t.Errorf("%d lines", len(lines))
	}
	for _, want := range []string{"2 terminations", "CRANK shielded pair", "CAN twisted pair", "1 wired spare (J)", "1 reserved (K)",
		"1 blank (D)", "two cavities of one net: L,M"} {
		if !strings.Contains(strings.Join(lines, "\n"), want) {
			t.Errorf("the report does not say %q:\n%s", want, strings.Join(lines, "\n"))
		}
	}
}
