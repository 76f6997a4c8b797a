package other

import (
	"small"
	"testing"
)

// What only a package beside it notices.
func TestPick(t *testing.T) {
	if small.Pick(1, 2) != 2 || small.Pick(3, 2) != 3 {
		t.Error("the greater")
	}
}
