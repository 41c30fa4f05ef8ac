/** The namespaces of QTI 3.0 and of its packages, as 1EdTech published them (final release of 1 May 2022). */
export const ASI = 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0';
export const ASI_SCHEMA = 'https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0_v1p0.xsd';
export const PACKAGE = 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1';
