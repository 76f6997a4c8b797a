package wirelist_test

import (
	"fmt"
	"strings"
	"testing"

	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// A fuse that is none is none.
func TestNoFuse(t *testing.T) {
	tables, err := table.Read("fuses.csv", []byte("wire,signal,from,to,gauge,fuse\n1,Lamp,PDM:1,LP:1,20,none\n2,Horn,PDM:2,HN:1,20,5A\n"),
		table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, _, err := wirelist.Import(tables, draft.Options{})
	if err != nil {
		t.Fatal(err)
	}
	if len(h.Feeds) != 1 {
		t.Errorf("%d feeds: %+v", len(h.Feeds), h.Feeds)
	}
}

// A column headed "Wire" that holds sizes is the size: two pins of one size are not joined.
func TestSizesUnderWire(t *testing.T) {
	const list = "## J1\n\n| Pin | Function | Wire | Colour |\n|---|---|---|---|\n| 1 | INJ 1 | 22 | BU |\n| 2 | INJ 2 | 22 | GN |\n| 3 " +
		"| 12V | 20 AWG | RD |\n"
	tables, err := table.Read("pins.md", []byte(list), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, rep, err := wirelist.Import(tables, draft.Options{})
	if err != nil {
		t.Fatal(err)
	}
	if len(h.Wires) != 3 || h.Wires[0].Size != "22" || h.Wires[2].Size != "20" || h.Wires[0].To.Set {
		t.Errorf("%+v", h.Wires)
	}
	if !strings.Contains(strings.Join(rep.Full(), "\n"), "column of wires holds sizes") {
		t.Errorf("%s", strings.Join(rep.Full(), "\n"))
	}
	// Numbers of wires stay numbers of wires.
	tables, _ = table.Read("ids.csv", []byte("wire,from,to\n20,A:1,B:1\n22,A:2,B:2\n"), table.Limits{})
	if h, _, err := wirelist.Import(tables, draft.Options{}); err != nil || h.Wires[0].ID != "20" || h.Wires[1].ID != "22" {
		t.Errorf("%v %+v", err, h.Wires)
	}
}

// A rating in the remark of a wire that begins at a fuse is that fuse's; no other one takes the name of a fuse that the list has.
func TestFuseAtTheEndOfAWire(t *testing.T) {
	const list = "wire,signal,from,to,gauge,note\n1,Pump feed,F2,PMP:A,14,fuse 15 A\n2,Lamp feed,F1:2,LMP:A,18,fuse 5 A\n" +
		"3,Horn,K1:87,HRN:1,18,fuse 10 A\n"
	tables, err := table.Read("fuses.csv", []byte(list), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	h, _, err := wirelist.Import(tables, draft.Options{})
	if err != nil || len(h.Feeds) != 3 {
		t.Fatalf("%v %+v", err, h.Feeds)
	}
	for k, want := range []string{"F2 15 1", "F1 5 2", "F3 10 3"} {
		f := h.Feeds[k]
		if got := fmt.Sprintf("%s %g %s", f.ID, float64(f.Amps.V), strings.Join(f.Wires, ",")); got != want {
			t.Errorf("feed %s, want %s", got, want)
		}
	}
}
