package columned

import (
	"slices"
	"strings"
	"testing"
)

// A table with ragged blanks is parted in the order of its headings, a line with two cells one blank apart by what its cells look like.
func TestByShape(t *testing.T) {
	const ragged = `No    From      To          Col       AWG    Use
21   XB1-1     F3-30       RED       12     Blade feed
22   XB1-2   F3-86     WHT      18    Relay coil
23   XB1-3       F3-85      BLK   18   Relay return
24   F3-87   M5-S       RED        12    Motor`
	heads := Gapped(ragged[:strings.IndexByte(ragged, '\n')])
	o := byShape(heads, 1, ragged)
	if o == nil {
		t.Fatal("it is none")
	}
	for line, want := range map[string][]string{
		"29   H9-2    XB1-9       BLK        18":          {"29", "H9-2", "XB1-9", "BLK", "18", ""},
		"30   XB1-5   F3-85 BLK   18   Relay  return":     {"30", "XB1-5", "F3-85", "BLK", "18", "Relay return"},
		"31 XB1-6   F3-86 WHT 18 Relay coil":              {"31", "XB1-6", "F3-86", "WHT", "18", "Relay coil"},
		"32   XB1-7   RED   12   Horn":                    nil, // from or to?
		"drawn  D.K.      checked  -":                     nil,
		"SAWMILL NO. 4      LEAD LIST          sheet 2  ": nil,
	} {
		if got := o.Cells(line); !slices.Equal(got, want) {
			t.Errorf("%q: %q, want %q", line, got, want)
		}
	}
	// Where cells stand under their headings, their place says what they are.
	const plain = `No    From      To          Col       AWG    Use
21    XB1-1     F3-30       RED       12     Blade feed
22    XB1-2     F3-86       WHT       18     Relay coil
23    XB1-3     F3-85       BLK              Relay return
24    F3-87     M5-S        RED       12     Motor`
	if byShape(heads, 1, plain) != nil {
		t.Error("cells under their headings are taken in their order")
	}
}
