package wirelist_test

import (
	"testing"

	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// A list whose sizes and colours nobody has filled in yet is one of wires all the same: its headings say so. What goes from
// one to another and says nothing of wires is none.
func TestUnfilledListIsRead(t *testing.T) {
	for text, wires := range map[string]int{
		"From,To,Gauge,Colour\nP1,S1,,\nP2,S1,,\n":           2,
		"From,To,mm2,Spec\nPump,Relay,,\n":                   1,
		"From,To,Name\nAda,Ben,\nMonday,Friday,\n":           0,
		"From,To,Colour\nMonday,Friday,\nSaturday,Sunday,\n": 0,
	} {
		tables, err := table.Read("list.csv", []byte(text), table.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		h, _, err := wirelist.Import(tables, draft.Options{})
		if len(h.Wires) != wires || (err == nil) != (wires > 0) {
			t.Errorf("%q: %d wires, %v; want %d", text, len(h.Wires), err, wires)
		}
	}
}
