problem-centimetres = Only { $typed }? If you measured in centimeters, type { $meant }.
problem-many-fins = With more than four fins, each shades its neighbors.
