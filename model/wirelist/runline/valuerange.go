package runline

import (
	"regexp"
	"strings"
)

// A line may say from which value to which something goes, and no wire. Its near end would be a bare number, and its far one a number and
// a unit; a rail is called by one word, "12V".
//
//	analog 0: 0 to 5 V
//	level: 4 - 20 mA
var valueRange = regexp.MustCompile(`(?:^|[:=] ?)[-+]?\d[\d.,]* ?(?:to|bis|à|a|tot|til|till|-|–|\.\.\.?|…) ?[-+]?\d[\d.,]*` +
	`(?: (?:V|A|m|C|F|W|s|N)| ?(?:mV|kV|mA|Hz|kHz|MHz|mm|cm|km|°C|°F|bar|mbar|psi|kPa|Pa|%|[Oo]hms?|kOhm|Ω|kΩ|rpm|ms|kW|kg|deg|°|bits?))\.?$`)

// IsValueRange reports whether a line says such a range behind its name, or alone.
func IsValueRange(text string) bool {
	const longest = 60 // bytes (no source)
	return len(text) < longest && strings.ContainsAny(text, "0123456789") && valueRange.MatchString(text)
}
