package crimp

import "testing"

// The frame goes by the size of the contact, the positioner by its gender as well in 22D alone. From memory of M22520.
func TestToolOfEachSize(t *testing.T) {
	for _, c := range []struct{ size, gender, frame, positioner string }{
		{"22D", "socket", "M22520/2-01", "M22520/2-07"}, {"22D", "pin", "M22520/2-01", "M22520/2-09"},
		{"22M", "socket", "M22520/2-01", "M22520/2-07"}, {"22", "pin", "M22520/2-01", "M22520/2-09"},
		{"20", "pin", "M22520/2-01", "M22520/2-10"}, {"20", "socket", "M22520/2-01", "M22520/2-10"},
		{"16", "pin", "M22520/1-01", "M22520/1-04"}, {"12", "socket", "M22520/1-01", "M22520/1-04"},
	} {
		got, ok := ToolFor(c.size, c.gender)
		if !ok || got.Frame != c.frame || got.Positioner != c.positioner || !got.Memory {
			t.Errorf("%s %s: %+v", c.size, c.gender, got)
		}
	}
	if got, ok := ToolFor("8", "pin"); ok || got != (Tool{}) {
		t.Errorf("no frame is known for size 8: %+v", got)
	}
}
