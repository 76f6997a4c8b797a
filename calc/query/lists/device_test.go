package lists_test

import (
	"testing"

	"contralay/calc/calctest"
	"contralay/calc/query/lists"
)

// How a contact is stripped and crimped is known of those of the circular connectors alone: of a device's connector that calls its
// contacts by the same size nothing is said. A well of size 20 is 5.31 mm deep (the contact rating table of a
// MIL-DTL-38999 catalogue).
func TestCrimpOfADevice(t *testing.T) {
	device := lists.CrimpList(calctest.InCavities(t, "cavities = [\"1\"]\ncontacts = { \"20\" = [\"1\"] }", "22 1"))
	circular := lists.CrimpList(calctest.InCavities(t, "insert = \"8-98\"\ngender = \"pin\"", "22 A"))
	if len(device) != 1 || device[0].StripMin != 0 || device[0].StripMax != 0 || device[0].Tool.Set {
		t.Errorf("a device's: %+v", device)
	}
	if len(circular) != 1 || !(circular[0].StripMin > 5.31 && circular[0].StripMax < 5.31+2) || !circular[0].Tool.Set {
		t.Errorf("a circular connector's: %+v", circular)
	}
}

// The socket of a connector that is called by its series II name has the part of that series where there is one, and the only one
// there is where there is none: of size 23 (arrangement 9-9) M39029/121-663, of size 20 of series II M39029/57-357.
func TestSocketOfItsSeries(t *testing.T) {
	for insert, want := range map[string]string{"8-98": "M39029/57-357", "9-98": "M39029/56-351", "9-9": "M39029/121-663"} {
		s := calctest.Built(t, "format = 1\n[[termination]]\nid = \"A\"\ninsert = \""+insert+"\"\ngender = \"socket\"\n")
		found := false
		for _, b := range lists.BuyList(s) {
			found = found || b.Part == want
		}
		if !found {
			t.Errorf("%s: %+v, want %s", insert, lists.BuyList(s), want)
		}
	}
}
