package value

import "strings"

// IsDesignator reports whether s is one to four letters, then one to three digits: "P7", "CONN12".
func IsDesignator(s string) bool {
	at := 0
	for at < len(s) && at < 5 && (s[at] >= 'A' && s[at] <= 'Z' || s[at] >= 'a' && s[at] <= 'z') {
		at++
	}
	if at < len(s) && s[at] >= 0x80 { // "ı" has a capital that is a plain letter
		letters := strings.TrimRight(s, "0123456789")
		at = len(letters)
		if strings.Trim(strings.ToUpper(letters), "ABCDEFGHIJKLMNOPQRSTUVWXYZ") != "" {
			return false
		}
	}
	if at < 1 || at > 4 || len(s)-at < 1 || len(s)-at > 3 {
		return false
	}
	for ; at < len(s); at++ {
		if !IsDigit(s[at]) {
			return false
		}
	}
	return true
}
