package name

// isLeftOpen reports whether the word behind "left" says that the wire ends nowhere: "left open at the tail", "left long, taped". What
// stands behind the side is a device: "left motor".
func isLeftOpen(w string) bool {
	switch w {
	case "open", "loose", "free", "long", "coiled", "taped", "unconnected", "unterminated", "hanging", "floating", "off", "out", "bare", "in",
		"as", "for", "with", "until", "at", "behind", "inside", "under", "blank", "empty", "unused", "disconnected", "capped":
		return true
	}
	return false
}
