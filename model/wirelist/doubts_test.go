package wirelist_test

import (
	"strings"
	"testing"

	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// What a table says that could make its wires wrong where it is read in another way is said once, with each row; a table
// that says nothing of the kind is read without a warning of it.
func TestDoubtsNameTheirRows(t *testing.T) {
	for _, c := range []struct{ name, list, says string }{
		{"a third pin", "ECU Pin,Function,Board Pin,Plate connector,Colour\n1,Feed,4,K7,red\n2,Ground,5,K7,black\n",
			"a column that could say an end is not read: Plate connector: row 2, row 3;"},
		{"two colours", "Pin,Signal,Colour,Color\n1,Feed,red,blue\n2,Ground,black,black\n3,Horn,white,green\n",
			"two columns of one kind that differ: Colour | Color: row 2, row 4;"},
		{"colours in the names", "Pin,Function\n1,\"red, horn\"\n2,\"black, ground\"\n3,\"white, lamp\"\n",
			"names that hold a colour: Function: row 2, row 3, row 4;"},
		{"two titles", "Ferry ramp\nLeft gate\nPin,Function\n1,Up\n2,Down\n",
			"the name of the connector is a guess: \"Ferry ramp\" from the text above its pins; it could be \"Left gate\": row 4, row 5;"},
		{"no title at all, several tables", "Pin,Function\n1,Up\n2,Down\n\nPin,Signal\n1,Left\n2,Right\n",
			"no heading names the connector: row 2, row 3"},
		{"a table of wires unread", "Pin,Function\n1,Up\n2,Down\n\nStop,Hue\nFlute,red\nOboe,blue\nTrumpet,green\n",
			"a table that is not read has something of wires: row 6, row 7, row 8;"},
		{"sizes in the names",
			"Plug A\n\nA1 - zx 1.5 - goes to the frame\nA2 - red 1.5 - goes to fuse 3\nA3 - black 0.75 - goes to the lamp\n",
			"a name that ends in a size: zx 1.5: row 3;"},
		{"plain", "Connector,Pin,Signal,Colour,Goes to\nJ1,1,Up,red,Jack\nJ1,2,Down,blue,Jack\n", ""},
	} {
		tables, err := table.Read("a.csv", []byte(c.list), table.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		_, rep, err := wirelist.Import(tables, draft.Options{})
		if err != nil {
			t.Fatalf("%s: %v", c.name, err)
		}
		report := strings.Join(rep.Full(), "\n")
		if c.says != "" && !strings.Contains(report, c.says) {
			t.Errorf("%s: not said: %s\n%s", c.name, c.says, report)
		}
		if c.name == "plain" && strings.Contains(strings.ReplaceAll(report, "warn: wire without size", ""), "row 2: warn") {
			t.Errorf("%s:\n%s", c.name, report)
		}
	}
}
