#pragma once

#include "app/report/page_flow.h"

#include <QScrollArea>

#include <memory>

namespace rig {

// Printed pages on the screen, one below the other, as they will come out of the printer: paper stays white
// whatever the theme. Page Up, Page Down, Home, End; plus and minus (with Ctrl as well) zoom, 0 fits the
// width.
class PagesView : public QScrollArea
{
    Q_OBJECT

public:
    explicit PagesView(QWidget* parent = nullptr);

    void setPages(std::shared_ptr<const PageFlow> flow); // stays on the page it was on
    // Until others come. What is pressed meanwhile to turn the pages counts for those.
    void clear();
    // What is said over the pages while it is not hidden; takes no focus from them.
    void coverWith(QWidget* cover);
    void setLook(const Look& look);
    int page() const; // counted from 0: the one that most of is seen
    int pageCount() const;
    void goTo(int page);
    double zoom() const; // 1: as large as on paper, at 96 dots per inch
    void zoomBy(double factor);
    void fitWidth();

signals:
    void pageChanged(int page, int count);

protected:
    void keyPressEvent(QKeyEvent* event) override;
    void resizeEvent(QResizeEvent* event) override;

private:
    class Canvas;

    bool takeKey(const QKeyEvent& event);
    double fittingZoom() const;
    void setZoom(double zoom, bool fits);
    void resizeCanvas();
    void tellPage();
    void turnTo(int page);

    Canvas* m_canvas = nullptr;
    QWidget* m_cover = nullptr;
    std::shared_ptr<const PageFlow> m_flow = std::make_shared<PageFlow>();
    int m_ahead = 0; // the page that was turned to before there were any
    Look m_look;
    double m_zoom = 1;
    bool m_fits = true;
    int m_told = -1;
};

} // namespace rig
