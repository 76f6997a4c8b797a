package sheet

import (
	"contralay/model/catalogue"
)

// AtMost caps a level where the limit itself is only from memory.
func AtMost(st catalogue.Standing, l Level) Level {
	if st == catalogue.Memory {
		return min(l, Warn)
	}
	return l
}
