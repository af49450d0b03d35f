#include "app/report/folded_pages.h"

#include "app/report/pieces.h"
#include "app/wording/report_words.h"

#include <QPainter>

namespace rig {

namespace {

// What stands on a small page is laid out as elsewhere and then made smaller: text of 9 point becomes 7.7.
constexpr double kShrink = 0.85;

// 1/96 inch, before that. Printers leave 4 to 5 mm at an edge free.
constexpr double kSideEdge = 34;
constexpr double kTopEdge = 30;
constexpr double kHeadHigh = 13;
constexpr double kFootHigh = 11;
constexpr double kAround = 9;

// On the sheet itself.
constexpr double kFoldFrom = 14;
constexpr double kFoldTo = 28;

QSizeF smallPage()
{
    const QSizeF sheet = sizeOf(Paper::A5).transposed();
    return QSizeF{sheet.width() / 2, sheet.height()} / kShrink;
}

LaidPicture shrunk(LaidPicture picture)
{
    return {[paint = std::move(picture.paint)](QPainter& painter, const Theme& theme) {
                painter.scale(kShrink, kShrink);
                paint(painter, theme);
            },
            std::move(picture.inWords)};
}

QRectF shrunk(const QRectF& where)
{
    return {where.topLeft() * kShrink, where.size() * kShrink};
}

PrintedPage shrunk(PrintedPage page)
{
    for (PageText& text : page.texts) {
        text.baseline *= kShrink;
        text.where = shrunk(text.where);
        text.pixels *= kShrink;
    }
    for (PageLine& line : page.lines) {
        line.from *= kShrink;
        line.to *= kShrink;
        line.width *= kShrink;
    }
    for (PageBox& box : page.boxes)
        box.where = shrunk(box.where);
    for (PageMark& mark : page.marks)
        mark.where = shrunk(mark.where);
    for (PagePicture& picture : page.pictures) {
        picture.where = shrunk(picture.where);
        picture.picture = shrunk(std::move(picture.picture));
    }
    return page;
}

class SmallPages
{
public:
    explicit SmallPages(const PageFrame& frame) : m_frame{frame}, m_width{smallPage().width() - 2 * kSideEdge}
    {
        m_head = wrapped(frame.airframe, m_width, kHeadHigh, Weight::SemiBold);
        m_foot = wrapped(frame.caution, m_width, kFootHigh, Weight::Regular);
        m_printed = wrapped(frame.printed, m_width * 0.7, kFootHigh, Weight::Regular);
        const double top = kTopEdge + lineHeight(kHeadHigh) * static_cast<double>(m_head.size()) + kAround;
        const double foot = lineHeight(kFootHigh) * static_cast<double>(m_foot.size() + m_printed.size());
        m_body = {kSideEdge, top, m_width, smallPage().height() - kTopEdge - foot - kAround - top};
    }

    const QRectF& body() const { return m_body; }

    std::vector<PrintedPage> of(std::span<const Block> blocks) const
    {
        std::vector<PrintedPage> pages = placedIn(m_body, blocks);
        for (std::size_t i = 0; i < pages.size(); ++i)
            addFrame(pages[i], ReportWords::pageOf(static_cast<int>(i) + 1, static_cast<int>(pages.size())));
        return pages;
    }

private:
    void addFrame(PrintedPage& page, const QString& number) const
    {
        double y = kTopEdge;
        for (const QString& line : m_head) {
            page.texts.push_back(textAt({kSideEdge, y}, line, kHeadHigh, Weight::SemiBold));
            y += lineHeight(kHeadHigh);
        }
        const double right = kSideEdge + m_width;
        for (const double rule : {y + kAround / 3, m_body.bottom() + kAround / 2})
            page.lines.push_back({{kSideEdge, rule}, {right, rule}, Role::InkSoft, 1});
        y = m_body.bottom() + kAround;
        for (const QString& line : m_foot) {
            page.texts.push_back(textAt({kSideEdge, y}, line, kFootHigh));
            y += lineHeight(kFootHigh);
        }
        PageText counted = textAt({0, y}, number, kFootHigh, Weight::Regular, Role::InkSoft);
        counted.baseline.rx() += right - counted.where.width();
        counted.where.moveLeft(right - counted.where.width());
        page.texts.push_back(std::move(counted));
        for (const QString& line : m_printed) {
            page.texts.push_back(textAt({kSideEdge, y}, line, kFootHigh, Weight::Regular, Role::InkSoft));
            y += lineHeight(kFootHigh);
        }
    }

    const PageFrame& m_frame;
    double m_width;
    std::vector<QString> m_head;
    std::vector<QString> m_foot;
    std::vector<QString> m_printed;
    QRectF m_body;
};

// One side of a sheet; of two pages that are not there nothing is made.
void addSide(PageFlow& flow, const std::vector<PrintedPage>& pages, std::size_t left, std::size_t right)
{
    const QSizeF size = sizeOf(flow);
    PrintedPage side;
    if (left < pages.size())
        side.add(shrunk(pages[left]), {0, 0});
    if (right < pages.size())
        side.add(shrunk(pages[right]), {size.width() / 2, 0});
    const double fold = size.width() / 2;
    side.lines.push_back({{fold, kFoldFrom}, {fold, kFoldTo}, Role::Line, 1});
    side.lines.push_back({{fold, size.height() - kFoldTo}, {fold, size.height() - kFoldFrom}, Role::Line, 1});
    flow.pages.push_back(std::move(side));
}

} // namespace

PageFlow layoutFolded(const PageFrame& frame, std::span<const Block> blocks)
{
    const SmallPages small{frame};
    const std::vector<PrintedPage> pages = small.of(blocks);
    PageFlow flow;
    flow.paper = Paper::A5;
    flow.isAcross = true;
    flow.body = shrunk(small.body());
    for (std::size_t first = 0; first < pages.size(); first += kPagesOfASheet) {
        addSide(flow, pages, first + 3, first);
        addSide(flow, pages, first + 1, first + 2);
    }
    return flow;
}

} // namespace rig
