package value

import (
	"regexp"
	"sync"
)

// IsAddress reports whether a cell is the address of an input or an output of a controller, "I0.3", "Q0.1", "DI1.2", "%IX0.0": one
// terminal, whose point parts no device from its cavity where the heading names the controller.
func IsAddress(cell string) bool { return addresses().MatchString(cell) }

var addresses = sync.OnceValue(func() *regexp.Regexp {
	return regexp.MustCompile(`^%?(?:[IQEA]|[DA][IOQ]|[IQ]X|[IQ]W)\d{1,2}\.\d{1,2}$`)
})
