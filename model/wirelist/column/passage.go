package column

import (
	"strings"

	"contralay/model/wirelist/name"
	"contralay/model/wirelist/shape"
	"contralay/model/wirelist/words"
)

// PassageOf is the connector that a heading names, without what stands in brackets and before it: "X7 (floor)", "Bulkhead X7", "X7 pin".
func PassageOf(head string) string {
	device := shape.DeviceOf(head)
	bare := strings.TrimSpace(name.WithoutBrackets(device))
	if w := strings.Fields(bare); len(w) == 2 && words.SaysPassage(w[0]) && name.IsDesignator(w[1]) {
		return w[1]
	}
	if name.IsDesignator(bare) {
		return bare
	}
	return device
}
