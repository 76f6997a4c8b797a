package wirelist_test

import (
	"slices"
	"strings"
	"testing"

	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// A cavity behind its device, with a blank between, is parted from it where the column as a whole says so. What is a device with a
// number stays one.
func TestCavitiesBehindABlank(t *testing.T) {
	for _, c := range []struct{ about, list, ends string }{
		{"the box of the near end, numbered devices beside it", "From,To,Function,Colour\nPLC A1,Valve 1,Open,red\nPLC A2,Valve " +
			"2,Open,blue\n" +
			"PLC A3,Valve 3,Open,green\nPLC B1,Lamp L,Lamp left,white\n",
			"PLC:A1 Valve-1:1, PLC:A2 Valve-2:1, PLC:A3 Valve-3:1, PLC:B1 Lamp-L:1"},
		{"lamps of two sides among plugs", "From,To,Function,Colour\nBox A1,Mixer plug 4,Mix,red\nBox A2,Mixer plug 7,Mix back,blue\n" +
			"Box A3,Mixer plug 9,Sense,green\nBox A4,Bow lamp L,Lamp left,white\nBox A7,Bow lamp R,Lamp right,black\n",
			"Box:A1 Mixer-plug:4, Box:A2 Mixer-plug:7, Box:A3 Mixer-plug:9, Box:A4 Bow-lamp-L:1, Box:A7 Bow-lamp-R:1"},
		{"one plain word counted from 1 among plugs", "From,To,Function,Colour\nBox A1,Mixer plug 4,Mix,red\nBox A2,Mixer plug " +
			"7,Back,blue\n" +
			"Box A3,Mixer plug 9,Sense,green\nBox A4,Gate 1,Near gate,white\nBox A7,Gate 2,Far gate,black\n",
			"Box:A1 Mixer-plug:4, Box:A2 Mixer-plug:7, Box:A3 Mixer-plug:9, Box:A4 Gate-1:1, Box:A7 Gate-2:1"},
		{"devices that are called as their nets", "From,To,Function,Colour\nBox A1,Mixer plug 4,Mix,red\nBox A2,Mixer plug 7,Back,blue\n" +
			"Box A3,Mixer plug 9,Sense,green\nBox A4,Grain gate 1,Grain gate 1,white\nBox A7,Grain gate 2,Grain gate 2,black\n",
			"Box:A1 Mixer-plug:4, Box:A2 Mixer-plug:7, Box:A3 Mixer-plug:9, Box:A4 Grain-gate-1:1, Box:A7 Grain-gate-2:1"},
		{"a device in two rows", "From,To,Function,Colour\nBox A1,Mixer plug 4,Mix,red\nBox A2,Mixer plug 7,Back,blue\n" +
			"Box A3,Mixer plug 9,Sense,green\nBox A4,Mixer plug 12,Tacho,grey\nBox A5,Grain gate 1,Open,white\nBox A7,Grain gate " +
			"1,Shut,black\n",
			"Box:A1 Mixer-plug:4, Box:A2 Mixer-plug:7, Box:A3 Mixer-plug:9, Box:A4 Mixer-plug:12, Box:A5 Grain-gate-1:1, " +
				"Box:A7 Grain-gate-1:2"},
		{"a relay alone in its column", "From,To,Signal,Colour\nPanel,Siren relay 86,Siren on,red\nMast lamp 1,Siren,Siren,blue\n" +
			"Deck lamp,Bell,Deck lamp,green\n",
			"Panel:1 Siren-relay:86, Mast-lamp-1:1 Siren:1, Deck-lamp:1 Bell:1"},
		{"a box that stands bare as well", "From,To,Colour\nPLC A1,Horn,red\nPLC A2,Bell,red\nPLC B4,Siren,red\nFuse tray " +
			"4,Lantern,white\n" +
			"Fuse tray,Main switch,black\n",
			"PLC:A1 Horn:1, PLC:A2 Bell:1, PLC:B4 Siren:1, Fuse-tray-4:1 Lantern:1, Fuse-tray:1 Main-switch:1"},
		{"points that tell both ends", "- Box 3 -> Nozzle 1, red\n- Box 4 -> Nozzle 2, blue\n- Box 11 -> Blower relay 86, white\n",
			"Box:3 Nozzle-1:1, Box:4 Nozzle-2:1, Box:11 Blower-relay:86"},
	} {
		t.Run(c.about, func(t *testing.T) {
			file := "spaced.csv"
			if strings.HasPrefix(c.list, "- ") {
				file = "spaced.md"
			}
			tables, err := table.Read(file, []byte(c.list), table.Limits{})
			if err != nil {
				t.Fatal(err)
			}
			h, rep, err := wirelist.Import(tables, draft.Options{})
			if err != nil {
				t.Fatal(err)
			}
			var ends []string
			for _, w := range h.Wires {
				ends = append(ends, w.From.V+" "+w.To.V)
			}
			if got := strings.Join(ends, ", "); got != c.ends {
				t.Errorf("ends\n%s, want\n%s", got, c.ends)
			}
			if !slices.ContainsFunc(rep.Full(), func(l string) bool { return strings.Contains(l, "a cavity behind its device") }) {
				t.Errorf("nothing says so:\n%s", strings.Join(rep.Full(), "\n"))
			}
		})
	}
}
