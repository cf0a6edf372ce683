package org.groundline.web.api;

import java.util.List;

/// All quantities that can be computed.
record QuantitiesView(List<QuantityView> quantities) {}
