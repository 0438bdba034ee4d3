package org.cupwright.app.office;

import java.util.List;
import java.util.Locale;
import org.cupwright.app.office.frame.FrameAround;
import org.cupwright.app.visit.CourseInPages;
import org.cupwright.app.visit.OfficeHouse;
import org.cupwright.app.visit.VisitArgument;
import org.cupwright.app.visit.Visits;
import org.springframework.beans.factory.config.BeanPostProcessor;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.ComponentScan;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.convert.converter.ConverterFactory;
import org.springframework.format.FormatterRegistry;
import org.springframework.http.CacheControl;
import org.springframework.web.method.support.HandlerMethodArgumentResolver;
import org.springframework.web.servlet.config.annotation.InterceptorRegistry;
import org.springframework.web.servlet.config.annotation.ResourceHandlerRegistry;
import org.springframework.web.servlet.config.annotation.WebMvcConfigurer;
import org.springframework.web.servlet.support.RequestDataValueProcessor;

/** Puts the pages together. Where the data lies and who guards the doors is given from outside. */
@Configuration(proxyBeanMethods = false)
@ComponentScan
public class OfficeConfiguration {
    private static final String OWN = "classpath:/org/cupwright/app/office/assets/";
    private static final String FONTS = "classpath:/org/cupwright/app/maps/fonts/";

    @Bean
    FrameAround frameAround(OfficeHouse house) {
        return new FrameAround(house);
    }

    @Bean
    WebMvcConfigurer officePages(OfficeHouse house, FrameAround frame) {
        VisitArgument visits = new VisitArgument(new Visits(house));
        return new WebMvcConfigurer() {
            @Override
            public void addArgumentResolvers(List<HandlerMethodArgumentResolver> resolvers) {
                resolvers.add(visits);
            }

            @Override
            public void addInterceptors(InterceptorRegistry registry) {
                registry.addInterceptor(visits);
                registry.addInterceptor(frame);
            }

            @Override
            public void addResourceHandlers(ResourceHandlerRegistry registry) {
                registry.addResourceHandler("/assets/**")
                        .addResourceLocations(OWN, FONTS)
                        .setCacheControl(CacheControl.noCache());
            }

            @Override
            public void addFormatters(FormatterRegistry registry) {
                registry.addConverterFactory(namesInAddresses());
            }
        };
    }

    /** Comes into forms beside the mark that whoever guards the doors puts there. */
    @Bean
    static BeanPostProcessor courseInPages() {
        return new BeanPostProcessor() {
            @Override
            public Object postProcessAfterInitialization(Object bean, String name) {
                return bean instanceof RequestDataValueProcessor others && !(bean instanceof CourseInPages)
                        ? new CourseInPages(others)
                        : bean;
            }
        };
    }

    /** In addresses names are written small. */
    @SuppressWarnings({"rawtypes", "unchecked"}) // an enum's class is known only when it is asked for
    private static ConverterFactory<String, Enum> namesInAddresses() {
        return new ConverterFactory<>() {
            @Override
            public <T extends Enum> org.springframework.core.convert.converter.Converter<String, T> getConverter(
                    Class<T> type) {
                return text ->
                        (T) Enum.valueOf(type, text.toUpperCase(Locale.ROOT).replace('-', '_'));
            }
        };
    }
}
