#include "app/widgets/pages_view.h"

#include "app/wording/preview_words.h"

#include <QKeyEvent>
#include <QPaintEvent>
#include <QPainter>
#include <QScrollBar>

#include <algorithm>
#include <cmath>

namespace rig {

namespace {

constexpr double kBetween = 18; // between two pages and around them
constexpr double kStep = 1.25;
constexpr double kLeastZoom = 0.3;
constexpr double kMostZoom = 4;
constexpr double kMostFitting = 1.2; // a page grows with the window up to this
constexpr int kLastOfAll = 1'000'000;

} // namespace

// The column of pages at the zoom there is.
class PagesView::Canvas : public QWidget
{
public:
    explicit Canvas(const PagesView& view) : m_view{view} {}

    QSize sizeAt(double zoom) const
    {
        const QSizeF page = sizeOf(*m_view.m_flow) * zoom;
        const auto count = static_cast<double>(m_view.m_flow->pages.size());
        return QSizeF{page.width() + 2 * kBetween, count * (page.height() + kBetween) + kBetween}.toSize();
    }

    QRectF placeOf(int page) const
    {
        const QSizeF size = sizeOf(*m_view.m_flow) * m_view.m_zoom;
        return {
            {std::max(kBetween, (width() - size.width()) / 2), kBetween + page * (size.height() + kBetween)},
            size};
    }

protected:
    void paintEvent(QPaintEvent* event) override
    {
        QPainter painter{this};
        const Theme paper = Theme::light();
        for (int i = 0; i < m_view.pageCount(); ++i) {
            const QRectF place = placeOf(i);
            if (!place.intersects(event->rect()))
                continue;
            painter.fillRect(place, paper.color(Role::Card));
            painter.setPen(QPen{m_view.m_look.theme.color(Role::Line), 1});
            painter.drawRect(place);
            painter.save();
            painter.setClipRect(place);
            painter.translate(place.topLeft());
            painter.scale(m_view.m_zoom, m_view.m_zoom);
            paint(painter, m_view.m_flow->pages[static_cast<std::size_t>(i)], paper);
            painter.restore();
        }
    }

private:
    const PagesView& m_view;
};

PagesView::PagesView(QWidget* parent) : QScrollArea{parent}, m_canvas{new Canvas{*this}}
{
    setObjectName("pagesView");
    setWidget(m_canvas);
    setWidgetResizable(false);
    setAlignment(Qt::AlignHCenter);
    setFocusPolicy(Qt::StrongFocus);
    setVerticalScrollBarPolicy(Qt::ScrollBarAlwaysOn);
    connect(verticalScrollBar(), &QScrollBar::valueChanged, this, [this] { tellPage(); });
}

void PagesView::setPages(std::shared_ptr<const PageFlow> flow)
{
    const int before = pageCount() > 0 ? page() : m_ahead;
    m_flow = std::move(flow);
    m_told = -1;
    setZoom(m_fits ? fittingZoom() : m_zoom, m_fits);
    goTo(std::min(before, pageCount() - 1));
}

void PagesView::clear()
{
    m_ahead = 0;
    m_flow = std::make_shared<PageFlow>();
    m_told = -1;
    setAccessibleName({});
    setAccessibleDescription({});
    resizeCanvas();
}

void PagesView::coverWith(QWidget* cover)
{
    m_cover = cover;
    cover->setParent(this);
    cover->setGeometry(rect());
}

void PagesView::setLook(const Look& look)
{
    m_look = look;
    m_canvas->update();
}

int PagesView::pageCount() const
{
    return static_cast<int>(m_flow->pages.size());
}

int PagesView::page() const
{
    const double middle = verticalScrollBar()->value() + viewport()->height() / 2.0;
    const double step = sizeOf(*m_flow).height() * m_zoom + kBetween;
    return std::clamp(static_cast<int>(std::floor((middle - kBetween / 2) / step)), 0,
                      std::max(0, pageCount() - 1));
}

void PagesView::goTo(int page)
{
    if (page < 0 || page >= pageCount())
        return;
    verticalScrollBar()->setValue(static_cast<int>(m_canvas->placeOf(page).top() - kBetween / 2));
    tellPage();
}

double PagesView::zoom() const
{
    return m_zoom;
}

double PagesView::fittingZoom() const
{
    const double width = viewport()->width() - 2 * kBetween;
    return std::clamp(width / sizeOf(*m_flow).width(), kLeastZoom, kMostFitting);
}

void PagesView::zoomBy(double factor)
{
    setZoom(std::clamp(m_zoom * factor, kLeastZoom, kMostZoom), false);
}

void PagesView::fitWidth()
{
    setZoom(fittingZoom(), true);
}

// What is in the middle of the window stays there.
void PagesView::setZoom(double zoom, bool fits)
{
    const double middle = (verticalScrollBar()->value() + viewport()->height() / 2.0) / m_zoom;
    m_zoom = zoom;
    m_fits = fits;
    resizeCanvas();
    verticalScrollBar()->setValue(static_cast<int>(middle * m_zoom - viewport()->height() / 2.0));
    tellPage();
}

void PagesView::resizeCanvas()
{
    const QSize wanted = m_canvas->sizeAt(m_zoom);
    m_canvas->resize(std::max(wanted.width(), viewport()->width()), wanted.height());
    m_canvas->update();
}

void PagesView::tellPage()
{
    const int now = page();
    if (now == m_told || pageCount() == 0)
        return;
    m_told = now;
    QStringList words;
    for (const PageText& text : m_flow->pages[static_cast<std::size_t>(now)].texts)
        words << text.text;
    setAccessibleName(PreviewWords::page(now + 1, pageCount()));
    setAccessibleDescription(words.join(QLatin1Char('\n')));
    emit pageChanged(now, pageCount());
}

void PagesView::turnTo(int page)
{
    if (pageCount() > 0)
        goTo(page);
    else
        m_ahead = std::max(0, page);
}

bool PagesView::takeKey(const QKeyEvent& event)
{
    const bool isThere = pageCount() > 0;
    const int now = isThere ? page() : m_ahead;
    switch (event.key()) {
    case Qt::Key_PageDown:
        turnTo(now + 1);
        return true;
    case Qt::Key_PageUp:
        turnTo(now - 1);
        return true;
    case Qt::Key_Home:
        turnTo(0);
        return true;
    case Qt::Key_End:
        turnTo(isThere ? pageCount() - 1 : kLastOfAll);
        return true;
    case Qt::Key_Plus:
    case Qt::Key_Equal:
        zoomBy(kStep);
        return true;
    case Qt::Key_Minus:
        zoomBy(1 / kStep);
        return true;
    case Qt::Key_0:
        fitWidth();
        return true;
    default:
        return false;
    }
}

void PagesView::keyPressEvent(QKeyEvent* event)
{
    if (!takeKey(*event))
        QScrollArea::keyPressEvent(event);
}

void PagesView::resizeEvent(QResizeEvent* event)
{
    QScrollArea::resizeEvent(event);
    if (m_cover)
        m_cover->setGeometry(rect());
    if (m_fits)
        setZoom(fittingZoom(), true);
    else
        resizeCanvas();
}

} // namespace rig
