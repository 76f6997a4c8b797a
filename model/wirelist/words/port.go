package words

import (
	"slices"
	"strings"
)

// IsPortOfKind reports whether a folded heading is what a plug is called as a whole, "parallel port": the word for a place on something
// stands in "hub port", and is a part of the name here.
func IsPortOfKind(folded string) bool {
	w := strings.Fields(folded)
	return len(w) > 1 && w[len(w)-1] == "port" && slices.Contains([]string{"parallel", "serial", "printer", "joystick", "game", "mouse",
		"keyboard", "user", "usb", "com", "lpt", "debug", "programming", "expansion", "isp", "jtag", "uart", "i2c", "spi", "can",
		"ethernet", "midi", "control", "service"}, w[len(w)-2])
}
