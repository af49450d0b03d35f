#pragma once

#include <QWidget>

#include <vector>

class QVBoxLayout;

namespace rig {

// Panels in two columns, each as high as it needs and each next one below the shorter column; in one, in
// their order, where two would be too narrow.
class PanelColumns : public QWidget
{
    Q_OBJECT

public:
    explicit PanelColumns(QWidget* parent = nullptr);

    void add(QWidget* panel);
    void setTextScale(double scale);
    void arrange(); // after what they show has changed

protected:
    void resizeEvent(QResizeEvent* event) override;
    void showEvent(QShowEvent* event) override;

private:
    std::vector<QWidget*> m_panels;
    QVBoxLayout* m_left = nullptr;
    QVBoxLayout* m_right = nullptr;
    double m_scale = 1;
    bool m_isDue = false; // for arranging, once it is seen
};

} // namespace rig
