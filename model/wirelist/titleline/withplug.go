package titleline

import (
	"regexp"
	"strings"

	"contralay/model/wirelist/table"
)

// A title may say which of the plugs that such things have the table is of, behind what it is of: "Pinout for gauges with the 14-way mast
// plug".
var withCounted = regexp.MustCompile(`^(?i:pinout|pin assignment|pins|wiring|connections|belegung|pinbelegung|brochage|piedinatura)\b.* ` +
	`(?i:with|mit|avec|con|met) (?:(?i:the|a|an|dem|einem|le|un|el|il|de|een) )?(\d{1,3}[- ]?(?i:pin|way|pole|position|polig\w*|voies|vie) .+)$`)

// WithCounted is the plug that a title says its things have, "14-way mast plug"; "" where it says none.
func WithCounted(text string) string {
	m := withCounted.FindStringSubmatch(strings.TrimRight(text, ": "))
	if m == nil {
		return ""
	}
	w := strings.Fields(m[1])
	if len(w) > mostName || !IsPlug(table.Fold(w[len(w)-1])) {
		return ""
	}
	return m[1]
}
