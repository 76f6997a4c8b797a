package wirelist_test

import (
	"slices"
	"testing"

	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// A wire that goes through two bulkheads is three wires, in the order of the columns; one that goes through neither is one.
func TestThroughTwoBulkheads(t *testing.T) {
	const list = "No,From,P20,P30,To,AWG,Signal\n1,MCU:1,A,4,FAN1:1,20,fan\n2,MCU:2,B,-,HTR1:1,16,heater\n3,MCU:3,-,-,BELL1:1,22,bell\n"
	tables, err := table.Read("l.csv", []byte(list), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, _, err := wirelist.Import(tables, draft.Options{})
	if err != nil {
		t.Fatal(err)
	}
	want := []string{"MCU:1 P20:A", "P20:A P30:4", "P30:4 FAN1:1", "MCU:2 P20:B", "P20:B HTR1:1", "MCU:3 BELL1:1"}
	var got []string
	for _, w := range h.Wires {
		got = append(got, w.From.V+" "+w.To.V)
	}
	if !slices.Equal(got, want) {
		t.Errorf("got %q, want %q", got, want)
	}
}
