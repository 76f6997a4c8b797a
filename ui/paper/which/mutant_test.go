package which

import (
	"testing"

	"contralay/calc/query/inserts"
)

// What a cavity is wanted for has its own word in the JSON.
func TestRoleOut(t *testing.T) {
	for role, want := range map[inserts.Role]string{inserts.ForDrain: "drain", inserts.ForSpare: "spare", inserts.ForWire: "wire"} {
		if got := roleOut(role); got != want {
			t.Errorf("%v: %q, want %q", role, got, want)
		}
	}
}
