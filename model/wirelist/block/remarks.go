package block

import (
	"contralay/model/wirelist/name"
	"contralay/model/wirelist/titleline"
)

// isAside reports whether a line above some others names no device that they are of: it is a remark, or a line of the table above it.
func isAside(text string) bool { return titleline.IsRemark(text) || name.IsFreeLine(text) }
