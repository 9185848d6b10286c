swing-density = One cubic meter of air weighs
