// Package strip draws what one wire more or fewer costs: a bar of the OD for each count, the
// present one marked, and where a layer or another sheath begins. The figures are those of
// calc/query/cliff.
package strip
