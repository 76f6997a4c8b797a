package wirelist_test

import (
	"strings"
	"testing"

	"contralay/model/wirelist"
	"contralay/model/wirelist/draft"
	"contralay/model/wirelist/table"
)

// What could be read wrong is said with its rows, whatever the list looks like; a plain, sound list shows nothing of it.
func TestAudit(t *testing.T) {
	const plain = "Wire,Signal,From,To,AWG,Colour\n1,Pump,PDM:1,PMP:1,20,red\n2,Fan,PDM:2,FAN:1,20,blue\n3,Horn,PDM:3,HRN:1,20,green\n" +
		"4,Lamp,PDM:4,LMP:1,20,white\n5,Wiper,PDM:5,WIP:1,20,grey\n"
	for called, c := range map[string]struct {
		list string
		says []string // each a part of a line of the report that warns
	}{
		"plain":     {plain, nil},
		"pin table": {"Hoist plug,,\nPin,Signal,Colour\n1,Up,red\n2,Down,blue\n3,Stop,green\n4,not used,\n", nil},
		"a row with a cell too many": {strings.Replace(plain, "3,Horn,", "3,Horn,,", 1),
			[]string{"a row unlike the others of its table: row 4;"}},
		"no headings": {"1,Up,red\n2,Down,blue\n3,Stop,green\n", []string{"a table without headings: row 1, row 2, row 3;"}},
		"a heading that nobody knows": {strings.Replace(plain, "From", "Zorpel", 1),
			[]string{"a column that could say an end is not read: Zorpel: row 2"}},
		"a heading between rows": {"Wire,To,Colour\nWell 1,,\nA1,PMP:1,red\n" +
			"A2,PMP:2,blue\nWell 2,,\nB1,PMP:3,red\nB2,PMP:4,blue\n",
			[]string{"rows below a text that is left out: Well 1: row 3, row 4, row 6, row 7;"}},
		"a column of sizes that nobody knows": {strings.Replace(strings.ReplaceAll(plain, ",20,", ",0.75,"), "AWG", "Zorpel", 1),
			[]string{"a column that is not understood: Zorpel: row 2, row 3, row 4, row 5, row 6; kept in the notes; it could be " +
				"a size"}},
		"a column of ends that nobody knows": {"Signal,Zorpel,To,Colour\nUp,Board/1,Lift/1,red\nDown,Board/2,Lift/2,blue\n" +
			"Stop,Board/3,Lift/3,green\nTilt,Board/4,Lift/4,grey\n",
			[]string{"a column that is not understood: Zorpel: row 2, row 3, row 4, row 5;"}},
		"cavities between two ends below a heading that nobody knows": {"Signal,From,Zorpel,To\nUp,Board:1,A,Lift:1\n" +
			"Down,Board:2,B,Lift:2\nStop,Board:3,C,Lift:3\nTilt,Board:4,D,Lift:4\n",
			[]string{"a column that is not understood: Zorpel: row 2, row 3, row 4, row 5;"}},
		"a colour where an end should be": {strings.Replace(plain, "3,Horn,PDM:3,HRN:1,20,green", "3,Horn,PDM:3,green,20,", 1),
			[]string{"a cell that belongs in another column: To: row 4;"}},
		"rows without headings above a table": {"1,Up,red,20\n2,Down,blue,20\n3,Stop,green,20\n\n" + plain,
			[]string{"a table without headings: row 1, row 2, row 3;"}},
		"a cavity that its table lacks": {"Hoist plug P1,,\nPin,Signal,To\n1,Up,\n2,Down,\n3,Stop,\n\n" +
			"Wire,From,To\n7,P1:9,LMP:1\n8,P1:2,LMP:2\n",
			[]string{"an end at a cavity that the table of its connector does not have: P1:9: row 8;"}},
	} {
		tables, err := table.Read("list.csv", []byte(c.list), table.Limits{})
		if err != nil {
			t.Fatal(err)
		}
		_, rep, err := wirelist.Import(tables, draft.Options{})
		if err != nil {
			t.Errorf("%s: %v", called, err)
			continue
		}
		full := strings.Join(rep.Full(), "\n")
		for _, s := range c.says {
			if !strings.Contains(full, "warn: "+s) {
				t.Errorf("%s: the report does not say %q\n%s", called, s, full)
			}
		}
		for _, line := range rep.Full() {
			if c.says == nil && strings.Contains(line, "warn: ") && !strings.Contains(line, "no far end") &&
				!strings.Contains(line, "without size") {
				t.Errorf("%s: said: %s", called, line)
			}
		}
	}
}

// A row that became no wire is named, with what its table was taken for.
func TestAuditNamesRowsWithoutWires(t *testing.T) {
	const list = "Pin,Signal,Colour\n1,Up,red\n2,Down,blue\n\nPart,Qty,Price\nShell,2,3.40\nBoot,2,0.80\n"
	tables, err := table.Read("list.csv", []byte(list), table.Limits{})
	if err != nil {
		t.Fatal(err)
	}
	_, rep, err := wirelist.Import(tables, draft.Options{})
	if err != nil {
		t.Fatal(err)
	}
	full := strings.Join(rep.Full(), "\n")
	for _, row := range []string{"row 6", "row 7"} {
		if !strings.Contains(full, row) {
			t.Errorf("%s is not named\n%s", row, full)
		}
	}
}
