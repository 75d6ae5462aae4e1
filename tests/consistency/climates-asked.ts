/** The six climates in which every question is asked: sunny and cold, dark and cold, hot, mild and damp, wet, southern. */
export const CLIMATES = ['denver', 'anchorage', 'tucson', 'belfast', 'quillayute', 'southern-chile'] as const;
