package words

import (
	"strings"

	"contralay/model/wirelist/name"
)

// IsPlugPin reports whether a cavity of a device is told by one of its plugs and the cavity there, "J1-2", and is no range of cavities.
func IsPlugPin(pin string) bool {
	plug, cavity, ok := strings.Cut(pin, "-")
	letters := strings.TrimRight(plug, "0123456789")
	if !ok || letters == plug || !name.IsCavity(cavity) {
		return false
	}
	switch letters {
	case "J", "P", "X", "CN", "CON", "PL", "SK", "TB":
		return true
	}
	return false
}
